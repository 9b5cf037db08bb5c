package rimebook.points;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import org.hibernate.annotations.Immutable;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;
import rimebook.shared.Actor;

/**
 * That a technical controller has seen the deductions up to a version, 0 for none noted
 * yet: written once.
 */
@Entity
@Immutable
class DeductionsSeen extends PerformanceLine {

	private int sequence;

	private String controller;

	private String controllerId;

	private Instant receivedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected DeductionsSeen() {
	}

	DeductionsSeen(UUID id, PerformanceId performance, int sequence, String controller, Actor actor, Instant now) {
		super(id, performance);
		this.sequence = sequence;
		this.controller = controller;
		this.controllerId = actor.id();
		this.receivedAt = now;
	}

	int sequence() {
		return this.sequence;
	}

}
