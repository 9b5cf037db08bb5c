package rimebook.accounts;

import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;

/** The link of a team's managers: which entry it opens. */
@Entity
class TeamLink extends PersonalLink {

	@Column(name = "entry_id")
	private UUID entry;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected TeamLink() {
	}

	TeamLink(UUID id, UUID competition, UUID entry, Given given) {
		super(id, competition, given);
		this.entry = entry;
	}

	UUID entry() {
		return this.entry;
	}

	TeamLinks.Pass pass() {
		return new TeamLinks.Pass(id(), competition(), this.entry, expiresAt());
	}

	/** As on the record: until when, never the token. */
	String inWords() {
		return "a link until " + expiresAt();
	}

}
