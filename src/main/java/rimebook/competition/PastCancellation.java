package rimebook.competition;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;

import rimebook.shared.AppendedRow;

/**
 * From when to when an event or a segment was cancelled that takes place again, UTC.
 */
@Entity
class PastCancellation extends AppendedRow {

	private UUID subjectId;

	private Instant cancelledAt;

	private Instant broughtBackAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PastCancellation() {
	}

	PastCancellation(UUID id, UUID subject, Instant cancelledAt, Instant broughtBackAt) {
		super(id);
		this.subjectId = subject;
		this.cancelledAt = cancelledAt;
		this.broughtBackAt = broughtBackAt;
	}

}
