package rimebook.accounts;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.shared.Actor;

/** One commentator's link: whom it was given, and the digest of its token. */
@Entity
class CommentaryLink {

	@Id
	private UUID id;

	@Version
	private Integer version;

	@Column(name = "competition_id")
	private UUID competition;

	private String person;

	private String tokenDigest;

	private boolean calls;

	private String issuedBy;

	private Instant issuedAt;

	private Instant expiresAt;

	private String revokedBy = "";

	private @Nullable Instant revokedAt;

	private @Nullable Instant openedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected CommentaryLink() {
	}

	// Hibernate counts the versions.
	@SuppressWarnings("NullAway.Init")
	CommentaryLink(UUID id, CommentaryLinks.IssueLink order, String tokenDigest, Actor actor, Instant now) {
		this.id = id;
		this.competition = order.competition();
		this.person = order.person();
		this.calls = order.calls();
		this.expiresAt = order.expiresAt();
		this.tokenDigest = tokenDigest;
		this.issuedBy = actor.name();
		this.issuedAt = now;
	}

	/** Void the link before this one; whoever has it open is shut out. */
	void renew(String tokenDigest, Instant expiresAt, Actor actor, Instant now) {
		this.expiresAt = expiresAt;
		this.tokenDigest = tokenDigest;
		this.issuedBy = actor.name();
		this.issuedAt = now;
		this.revokedBy = "";
		this.revokedAt = null;
		this.openedAt = null;
	}

	/** Shut it; done already where it is shut. */
	void revoke(Actor actor, Instant now) {
		if (this.revokedAt == null) {
			this.revokedAt = now;
			this.revokedBy = actor.name();
		}
	}

	boolean isRevoked() {
		return this.revokedAt != null;
	}

	/** Note the first time that it was opened. */
	void open(Instant now) {
		if (this.openedAt == null) {
			this.openedAt = now;
		}
	}

	UUID id() {
		return this.id;
	}

	UUID competition() {
		return this.competition;
	}

	String person() {
		return this.person;
	}

	Instant issuedAt() {
		return this.issuedAt;
	}

	CommentaryLinks.Standing standing(Instant now) {
		return isRevoked() ? CommentaryLinks.Standing.REVOKED
				: now.isBefore(this.expiresAt) ? CommentaryLinks.Standing.GOOD : CommentaryLinks.Standing.EXPIRED;
	}

	CommentaryLinks.Pass pass() {
		return new CommentaryLinks.Pass(this.id, this.competition, this.person, this.calls, this.expiresAt);
	}

	CommentaryLinks.LinkView view(@Nullable String token, Instant now) {
		return new CommentaryLinks.LinkView(pass(), standing(now), token, this.issuedBy, this.issuedAt, this.revokedBy,
				this.openedAt);
	}

	/** As on the record: whose it is and until when, never the token. */
	String inWords() {
		return this.person + ", until " + this.expiresAt + (this.calls ? ", with the elements as they are called" : "");
	}

}
