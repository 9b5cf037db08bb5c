package rimebook.points;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.Immutable;

import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;

/** One version of the elements called for a performance: written once, never changed. */
@Entity
@Immutable
class CalledList extends PerformanceLine {

	private int sequence;

	@Convert(converter = PointsJson.Elements.class)
	private List<CalledElement> elements;

	@Enumerated(EnumType.STRING)
	private CardOrigin origin;

	private String calledBy;

	private Instant receivedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected CalledList() {
	}

	CalledList(UUID id, PerformanceId performance, int sequence, List<CalledElement> elements, Written written) {
		super(id, performance);
		this.sequence = sequence;
		this.elements = List.copyOf(elements);
		this.origin = written.origin();
		this.calledBy = written.by();
		this.receivedAt = written.at();
	}

	int sequence() {
		return this.sequence;
	}

	/** Tell whether two officials made it after the cards were closed. */
	boolean isCorrected() {
		return this.origin == CardOrigin.CORRECTION;
	}

	List<CalledElement> elements() {
		return this.elements;
	}

	/** The list as it would be with another element in one place; never to be kept. */
	CalledList supposing(SheetAmendment.ElementAmendment other) {
		return new CalledList(getId(), new PerformanceId(performance()), this.sequence,
				SheetEdits.with(this.elements, other, getId()),
				new Written(CardOrigin.CORRECTION, this.calledBy, this.receivedAt));
	}

	CalledListView view() {
		return new CalledListView(this.sequence, this.elements, this.calledBy, this.receivedAt);
	}

	String inWords() {
		return words(this.elements);
	}

	static String words(List<CalledElement> elements) {
		return elements.stream().map(CalledElement::inWords).collect(Collectors.joining("; "));
	}

	/**
	 * How a version of a list came to be.
	 *
	 * @param by who wrote it, as they were called then
	 * @param at when, UTC
	 */
	record Written(CardOrigin origin, String by, Instant at) {
	}

}
