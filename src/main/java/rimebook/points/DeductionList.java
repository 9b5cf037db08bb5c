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

/** One version of the deductions of a performance: written once, never changed. */
@Entity
@Immutable
class DeductionList extends PerformanceLine {

	private int sequence;

	@Convert(converter = PointsJson.Deductions.class)
	private List<NotedDeduction> items;

	@Enumerated(EnumType.STRING)
	private CardOrigin origin;

	private String notedBy;

	private Instant receivedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected DeductionList() {
	}

	DeductionList(UUID id, PerformanceId performance, int sequence, List<NotedDeduction> items,
			CalledList.Written written) {
		super(id, performance);
		this.sequence = sequence;
		this.items = List.copyOf(items);
		this.origin = written.origin();
		this.notedBy = written.by();
		this.receivedAt = written.at();
	}

	/** A list with another deduction in one place; never to be kept. */
	static DeductionList supposing(PerformanceId performance, List<NotedDeduction> items,
			SheetAmendment.DeductionAmendment other) {
		return new DeductionList(performance.value(), performance, 1, SheetEdits.with(items, other, "", null),
				new CalledList.Written(CardOrigin.CORRECTION, "", Instant.EPOCH));
	}

	int sequence() {
		return this.sequence;
	}

	List<NotedDeduction> items() {
		return this.items;
	}

	/** Tell whether it has those deductions of those people, whenever they were noted. */
	boolean says(List<NotedDeduction> others) {
		return this.items.stream()
			.map(NotedDeduction::untimed)
			.toList()
			.equals(others.stream().map(NotedDeduction::untimed).toList());
	}

	DeductionNotes.DeductionListView view() {
		return new DeductionNotes.DeductionListView(this.sequence, this.items, this.receivedAt);
	}

	String inWords() {
		return this.items.isEmpty() ? "none"
				: this.items.stream().map((item) -> item.item() + " " + item.count()).collect(Collectors.joining("; "));
	}

}
