package rimebook.marks;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Transient;
import org.hibernate.annotations.Immutable;
import org.springframework.data.domain.Persistable;

/** One version of the deductions of a performance: written once, never changed. */
@Entity
@Immutable
class DeductionList implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column(name = "performance_id")
	private UUID performance;

	private int sequence;

	@Convert(converter = PointsJson.Deductions.class)
	private List<NotedDeduction> items;

	private String notedBy;

	private Instant receivedAt;

	@Transient
	private boolean fresh;

	@SuppressWarnings("NullAway.Init")
	protected DeductionList() {
	}

	DeductionList(UUID id, PerformanceId performance, int sequence, List<NotedDeduction> items, String notedBy,
			Instant receivedAt) {
		this.id = id;
		this.performance = performance.value();
		this.sequence = sequence;
		this.items = List.copyOf(items);
		this.notedBy = notedBy;
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

	List<NotedDeduction> items() {
		return this.items;
	}

	DeductionListView view() {
		return new DeductionListView(this.sequence, this.items, this.receivedAt);
	}

	String inWords() {
		return this.items.isEmpty() ? "none"
				: this.items.stream().map((item) -> item.item() + " " + item.count()).collect(Collectors.joining("; "));
	}

}
