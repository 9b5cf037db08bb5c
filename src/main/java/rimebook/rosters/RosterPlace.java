package rimebook.rosters;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.shared.ConflictException;

/** Somebody's place on the roster of an entry. It stays when they leave. */
@Entity
class RosterPlace {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	@Column(name = "entry_id")
	private UUID entry;

	private int number;

	@ManyToOne(fetch = FetchType.LAZY, optional = false)
	private Skater skater;

	@Enumerated(EnumType.STRING)
	private PlaceRole role;

	/** The number of the place whose skater this one stepped in for. */
	private @Nullable Integer insteadOf;

	private Instant changedAt;

	/** Whose place it was before two people turned out to be one. */
	private @Nullable UUID mergedFrom;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected RosterPlace() {
	}

	RosterPlace(UUID id, EntryId entry, int number, Skater skater, PlaceRole role, Instant now) {
		this.id = id;
		this.entry = entry.value();
		this.number = number;
		this.skater = skater;
		this.role = role;
		this.changedAt = now;
	}

	/** Take that part from now on. */
	void become(int seen, PlaceRole role, @Nullable Integer insteadOf, Instant now) {
		ConflictException.requireSeen("roster", seen, this.version);
		this.role = role;
		this.insteadOf = insteadOf;
		this.changedAt = now;
	}

	/** Give it to whom its skater turned out to be. */
	void giveTo(Skater other) {
		this.mergedFrom = this.skater.view().id().value();
		this.skater = other;
	}

	/** Give it back to whom it was before. */
	void giveBackTo(Skater before) {
		this.mergedFrom = null;
		this.skater = before;
	}

	UUID id() {
		return this.id;
	}

	EntryId entry() {
		return new EntryId(this.entry);
	}

	/** As the record says it: the person is named by the place alone. */
	String inWords() {
		return "place " + this.number + ", " + this.role.inWords()
				+ ((this.insteadOf != null) ? " instead of place " + this.insteadOf : "");
	}

	/** The same with whose it is, by the identity alone. */
	String inWordsWithWhose() {
		return inWords() + ", of " + this.skater.view().id();
	}

	RosterView.Place view() {
		return new RosterView.Place(new RosterView.PlaceId(this.id), this.number, this.skater.view(), this.role,
				this.insteadOf, (this.version != null) ? this.version : 0);
	}

}
