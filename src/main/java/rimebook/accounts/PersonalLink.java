package rimebook.accounts;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.shared.Actor;

/**
 * A link that opens a page without a password, for one person or one team: the digest of
 * its token, who gave it, until when it is good, and whether it was shut or opened.
 */
@MappedSuperclass
abstract class PersonalLink {

	@Id
	private UUID id;

	@Version
	private Integer version;

	@Column(name = "competition_id")
	private UUID competition;

	private String tokenDigest;

	private String issuedBy;

	private Instant issuedAt;

	private Instant expiresAt;

	private String revokedBy = "";

	private @Nullable Instant revokedAt;

	private @Nullable Instant openedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PersonalLink() {
	}

	// Hibernate counts the versions.
	@SuppressWarnings("NullAway.Init")
	PersonalLink(UUID id, UUID competition, Given given) {
		this.id = id;
		this.competition = competition;
		give(given);
	}

	/** Void the link before this one; whoever has it open is shut out. */
	void renew(Given given) {
		give(given);
		this.revokedBy = "";
		this.revokedAt = null;
		this.openedAt = null;
	}

	private void give(Given given) {
		this.tokenDigest = given.tokenDigest();
		this.expiresAt = given.expiresAt();
		this.issuedBy = given.by().name();
		this.issuedAt = given.at();
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

	boolean isRevokedAfter(Instant then) {
		return this.revokedAt != null && this.revokedAt.isAfter(then);
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

	String issuedBy() {
		return this.issuedBy;
	}

	Instant issuedAt() {
		return this.issuedAt;
	}

	Instant expiresAt() {
		return this.expiresAt;
	}

	/** Who shut it, empty where nobody did. */
	String revokedBy() {
		return this.revokedBy;
	}

	/** When it was opened first, {@code null} where it was not. */
	@Nullable Instant openedAt() {
		return this.openedAt;
	}

	LinkStanding standing(Instant now) {
		return isRevoked() ? LinkStanding.REVOKED
				: now.isBefore(this.expiresAt) ? LinkStanding.GOOD : LinkStanding.EXPIRED;
	}

	/**
	 * That somebody was given a token.
	 *
	 * @param tokenDigest by which it is known again
	 * @param expiresAt until when it opens anything
	 */
	record Given(String tokenDigest, Instant expiresAt, Actor by, Instant at) {
	}

}
