package rimebook.clock;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;
import rimebook.performances.Reskates;

/**
 * One touch of the clock: written once and never changed. What was a slip is taken back
 * by a further one.
 */
@Entity
@Immutable
class ClockTap extends PerformanceLine {

	private int sequence;

	@Enumerated(EnumType.STRING)
	private ClockView.ClockAct act;

	@Enumerated(EnumType.STRING)
	private @Nullable InterruptionCause cause;

	@Enumerated(EnumType.STRING)
	private Reskates.@Nullable Marking marking;

	private String words;

	private String notedBy;

	private Instant notedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected ClockTap() {
	}

	ClockTap(UUID id, PerformanceId performance, ClockView.Tap tap) {
		super(id, performance);
		this.sequence = tap.sequence();
		this.act = tap.act();
		this.cause = tap.cause();
		this.marking = tap.marking();
		this.words = tap.words();
		this.notedBy = tap.noted().notedBy();
		this.notedAt = tap.noted().notedAt();
	}

	ClockView.Tap view() {
		return new ClockView.Tap(this.sequence, this.act, this.cause, this.marking, this.words,
				new ClockView.Tap.Noted(this.notedBy, this.notedAt));
	}

}
