package rimebook.accounts;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import org.jspecify.annotations.Nullable;

import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** The link of a team's managers: which entry it opens. */
@Entity
class TeamLink extends PersonalLink {

	@Column(name = "entry_id")
	private UUID entry;

	private @Nullable UUID carriedBy;

	private @Nullable Instant askedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected TeamLink() {
	}

	TeamLink(UUID id, UUID competition, UUID entry, Given given) {
		super(id, competition, given);
		this.entry = entry;
	}

	TeamLink(UUID id, LinkUnderWay arrived) {
		this(id, arrived.order().competition(), arrived.order().entry(), given(arrived));
		take(arrived);
	}

	private static Given given(LinkUnderWay arrived) {
		Actor by = new Actor(arrived.issuedBy(), "system", "server");
		return new Given(arrived.tokenDigest(), arrived.order().expiresAt(), by, arrived.issuedAt());
	}

	private void take(LinkUnderWay arrived) {
		this.carriedBy = arrived.carriedBy();
		this.askedAt = arrived.askedAt();
	}

	@Override
	void renew(Given given) {
		super.renew(given);
		this.carriedBy = null;
		this.askedAt = null;
	}

	/** Void the link before one that has arrived. */
	void renew(LinkUnderWay arrived) {
		renew(given(arrived));
		take(arrived);
	}

	/** Tell whether somebody gave or shut it after the other had set out. */
	boolean isNewerThan(LinkUnderWay other) {
		return issuedAt().isAfter(other.issuedAt()) || isRevokedAfter(other.issuedAt());
	}

	/**
	 * Refuse unless a link that was asked for then may take its place.
	 * @throws ConflictException {@code team-link-newer}, {@code team-link-shut}
	 */
	void checkGivesWayTo(Instant asked) {
		if (isRevokedAfter(asked)) {
			throw new ConflictException("team-link-shut", Sentence.of("accounts.team-link-shut", revokedBy()));
		}
		if (((this.askedAt != null) ? this.askedAt : issuedAt()).isAfter(asked)) {
			throw new ConflictException("team-link-newer", Sentence.of("accounts.team-link-newer", issuedBy()));
		}
	}

	/** What brought it to the team; {@code null} where it was given by hand. */
	@Nullable UUID carriedBy() {
		return this.carriedBy;
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
