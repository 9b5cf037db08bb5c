package rimebook.remarks;

import java.time.Instant;
import java.util.Locale;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;
import rimebook.shared.Actor;

/** A remark of the referee to the panel: written once. */
@Entity
@Immutable
class Remark extends PerformanceLine {

	@Enumerated(EnumType.STRING)
	private Remarks.RemarkKind kind;

	private String text;

	private String notedBy;

	private Instant notedAt;

	private @Nullable Instant touch;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Remark() {
	}

	Remark(UUID id, PerformanceId performance, Remarks.RemarkKind kind, String text, Actor actor, Instant now) {
		super(id, performance);
		this.kind = kind;
		this.text = text;
		this.notedBy = actor.name();
		this.notedAt = now;
	}

	/** Say on which touch of the clock it rests; {@code null} for none. */
	Remark restingOn(@Nullable Instant touch) {
		this.touch = touch;
		return this;
	}

	/** As on the record: "fall: one skater". */
	String inWords() {
		return this.kind.name().toLowerCase(Locale.ROOT) + ": " + this.text;
	}

	Remarks.RemarkView view() {
		return new Remarks.RemarkView(getId(), this.kind, this.text, this.notedBy, this.notedAt, this.touch);
	}

}
