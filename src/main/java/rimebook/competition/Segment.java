package rimebook.competition;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.tabulation.SegmentKind;

@Entity
class Segment {

	@Id
	private UUID id;

	@Version
	private Integer version;

	@ManyToOne(fetch = FetchType.LAZY, optional = false)
	private Event event;

	private int position;

	private String slug;

	private String name;

	@Enumerated(EnumType.STRING)
	private SegmentKind kind;

	private int factor;

	private int programmeSeconds;

	private int toleranceSeconds;

	private @Nullable Integer shorterSeconds;

	private String cancelled = "";

	private @Nullable Instant cancelledAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Segment() {
	}

	// Hibernate counts the versions; whoever makes one writes the rest at once.
	@SuppressWarnings("NullAway.Init")
	Segment(UUID id, Event event) {
		this.id = id;
		this.event = event;
	}

	Event event() {
		return this.event;
	}

	void write(int position, String slug, DraftEvent.DraftSegment facts) {
		this.position = position;
		this.slug = slug;
		this.name = facts.name();
		this.kind = facts.kind();
		this.factor = facts.factor();
		this.programmeSeconds = facts.programmeSeconds();
		this.toleranceSeconds = facts.toleranceSeconds();
		this.shorterSeconds = facts.shorterSeconds();
	}

	void cancel(String reason, Instant now) {
		this.cancelled = reason;
		this.cancelledAt = now;
	}

	void bringBack() {
		this.cancelled = "";
		this.cancelledAt = null;
	}

	boolean hasSlug(String slug) {
		return slug.equals(this.slug);
	}

	int position() {
		return this.position;
	}

	SegmentView view() {
		return new SegmentView(new SegmentId(this.id), this.event.id(), this.position, this.slug,
				new DraftEvent.DraftSegment(this.name, this.kind, this.factor, this.programmeSeconds,
						this.toleranceSeconds, this.shorterSeconds),
				EventView.Cancellation.of(this.cancelled, this.cancelledAt));
	}

}
