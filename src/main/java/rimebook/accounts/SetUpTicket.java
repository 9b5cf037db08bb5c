package rimebook.accounts;

import java.time.Duration;
import java.time.Instant;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** The one set-up link: only its digest, and whether it was used. */
@Entity
@Table(name = "set_up_link")
class SetUpTicket {

	static final int ONLY = 1;

	/** A log or a screen with the link may be seen by others long after. */
	static final Duration LIFE = Duration.ofHours(24);

	@Id
	private int id = ONLY;

	private String tokenDigest;

	private Instant madeAt;

	private @Nullable Instant usedAt;

	/** For Hibernate. */
	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected SetUpTicket() {
	}

	SetUpTicket(String tokenDigest, Instant madeAt) {
		this.tokenDigest = tokenDigest;
		this.madeAt = madeAt;
	}

	void replace(String tokenDigest, Instant madeAt) {
		this.tokenDigest = tokenDigest;
		this.madeAt = madeAt;
		this.usedAt = null;
	}

	boolean isFor(String digest) {
		return this.tokenDigest.equals(digest);
	}

	/** Refuse a link that was used, or that was made too long ago. */
	void refuseUnlessGood(Instant now) {
		if (this.usedAt != null) {
			throw new ConflictException("set-up-link-used", Sentence.of("accounts.set-up-link-used"));
		}
		if (!now.isBefore(this.madeAt.plus(LIFE))) {
			throw new ConflictException("set-up-link-expired",
					Sentence.of("accounts.set-up-link-expired", Math.toIntExact(LIFE.toHours())));
		}
	}

	void use(Instant now) {
		refuseUnlessGood(now);
		this.usedAt = now;
	}

}
