package rimebook.accounts;

import java.util.UUID;

import jakarta.persistence.Entity;

/** One commentator's link: whom it was given, and what it may tell. */
@Entity
class CommentaryLink extends PersonalLink {

	private String person;

	private boolean calls;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected CommentaryLink() {
	}

	CommentaryLink(UUID id, CommentaryLinks.IssueLink order, Given given) {
		super(id, order.competition(), given);
		this.person = order.person();
		this.calls = order.calls();
	}

	String person() {
		return this.person;
	}

	CommentaryLinks.Pass pass() {
		return new CommentaryLinks.Pass(id(), competition(), this.person, this.calls, expiresAt());
	}

	/** As on the record: whose it is and until when, never the token. */
	String inWords() {
		return this.person + ", until " + expiresAt() + (this.calls ? ", with the elements as they are called" : "");
	}

}
