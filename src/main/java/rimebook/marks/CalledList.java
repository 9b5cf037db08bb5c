package rimebook.marks;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Transient;
import org.hibernate.annotations.Immutable;
import org.springframework.data.domain.Persistable;

/** One version of the elements called for a performance: written once, never changed. */
@Entity
@Immutable
class CalledList implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column(name = "performance_id")
	private UUID performance;

	private int sequence;

	@Convert(converter = PointsJson.Elements.class)
	private List<CalledElement> elements;

	@Enumerated(EnumType.STRING)
	private CardOrigin origin;

	private String calledBy;

	private Instant receivedAt;

	@Transient
	private boolean fresh;

	@SuppressWarnings("NullAway.Init")
	protected CalledList() {
	}

	CalledList(UUID id, PerformanceId performance, int sequence, List<CalledElement> elements, CardOrigin origin,
			String calledBy, Instant receivedAt) {
		this.id = id;
		this.performance = performance.value();
		this.sequence = sequence;
		this.elements = List.copyOf(elements);
		this.origin = origin;
		this.calledBy = calledBy;
		this.receivedAt = receivedAt;
		this.fresh = true;
	}

	@Override
	public UUID getId() {
		return this.id;
	}

	@Override
	public boolean isNew() {
		return this.fresh;
	}

	UUID performance() {
		return this.performance;
	}

	int sequence() {
		return this.sequence;
	}

	List<CalledElement> elements() {
		return this.elements;
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

}
