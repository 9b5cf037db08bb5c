package rimebook.rosters;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.rosters.eligibility.Rule;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** That a rule is not held against a team, or against one of its people. */
@Entity
class Waiver {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	@Column(name = "entry_id")
	private UUID entry;

	@Enumerated(EnumType.STRING)
	private Rule rule;

	private @Nullable UUID placeId;

	private String reason;

	private String givenBy;

	private Instant givenAt;

	private String takenBackReason = "";

	private String takenBackBy = "";

	private @Nullable Instant takenBackAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Waiver() {
	}

	Waiver(UUID id, Waivers.Waive order, String givenBy, Instant now) {
		this.id = id;
		this.entry = order.entry().value();
		this.rule = order.rule();
		this.placeId = (order.place() != null) ? order.place().value() : null;
		this.reason = order.reason();
		this.givenBy = givenBy;
		this.givenAt = now;
	}

	void takeBack(int seen, String reason, String by, Instant now) {
		ConflictException.requireSeen("waiver", seen, this.version);
		if (this.takenBackAt != null) {
			throw new ConflictException("waiver-taken-back", Sentence.of("rosters.waiver-taken-back"));
		}
		this.takenBackReason = reason;
		this.takenBackBy = by;
		this.takenBackAt = now;
	}

	UUID id() {
		return this.id;
	}

	WaiverView view() {
		return new WaiverView(this.id, new EntryId(this.entry), this.rule,
				(this.placeId != null) ? new RosterView.PlaceId(this.placeId) : null,
				new WaiverView.Word(this.reason, this.givenBy, this.givenAt),
				(this.takenBackAt != null)
						? new WaiverView.Word(this.takenBackReason, this.takenBackBy, this.takenBackAt) : null,
				(this.version != null) ? this.version : 0);
	}

}
