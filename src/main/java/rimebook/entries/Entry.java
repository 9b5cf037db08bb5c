package rimebook.entries;

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

import rimebook.competition.EventId;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

@Entity
class Entry {

	@Id
	private UUID id;

	@Version
	private Integer version;

	private UUID eventId;

	@ManyToOne(fetch = FetchType.LAZY, optional = false)
	private Team team;

	@Enumerated(EnumType.STRING)
	private EntryState state;

	private String lateReason;

	private Instant enteredAt;

	private @Nullable Instant withdrawnAt;

	private String withdrawnReason;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Entry() {
	}

	/** An entry that {@link #enter} has still to make good. */
	// Hibernate counts the versions; whoever makes one enters the team at once.
	@SuppressWarnings("NullAway.Init")
	Entry(UUID id, EventId event, Team team) {
		this.id = id;
		this.eventId = event.value();
		this.team = team;
		this.state = EntryState.WITHDRAWN;
	}

	/** Enter the team, for the first time or again after it had withdrawn. */
	void enter(String lateReason, Instant now) {
		if (this.state == EntryState.ENTERED) {
			throw new ConflictException("already-entered", "team",
					Sentence.of("entries.already-entered", this.team.spoken()));
		}
		this.state = EntryState.ENTERED;
		this.lateReason = lateReason;
		this.enteredAt = now;
		this.withdrawnAt = null;
		this.withdrawnReason = "";
	}

	void withdraw(int version, String reason, Instant now) {
		ConflictException.requireSeen("entry", version, this.version);
		if (this.state == EntryState.WITHDRAWN) {
			throw new ConflictException("already-withdrawn",
					Sentence.of("entries.already-withdrawn", this.team.spoken()));
		}
		this.state = EntryState.WITHDRAWN;
		this.withdrawnAt = now;
		this.withdrawnReason = reason;
	}

	/** Let the team skate in another event; when it was entered stays. */
	void move(int version, EventId event) {
		ConflictException.requireSeen("entry", version, this.version);
		this.eventId = event.value();
	}

	/** Take a withdrawal back: the team takes part as if it had never left. */
	void reinstate(int version) {
		ConflictException.requireSeen("entry", version, this.version);
		if (this.state == EntryState.ENTERED) {
			throw new ConflictException("not-withdrawn", Sentence.of("entries.not-withdrawn", this.team.spoken()));
		}
		this.state = EntryState.ENTERED;
		this.withdrawnAt = null;
		this.withdrawnReason = "";
	}

	EntryId id() {
		return new EntryId(this.id);
	}

	EventId event() {
		return new EventId(this.eventId);
	}

	Team team() {
		return this.team;
	}

	EntryView view() {
		return new EntryView(id(), event(), this.team.view(), new EntryView.Acceptance(this.enteredAt, this.lateReason),
				(this.withdrawnAt != null) ? new EntryView.Withdrawal(this.withdrawnAt, this.withdrawnReason) : null,
				this.version);
	}

	/** Why the team withdrew, empty while it takes part. */
	String withdrawnReason() {
		return this.withdrawnReason;
	}

	String inWords() {
		return this.team.inWords();
	}

}
