package rimebook.accounts;

import java.time.Instant;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;

/** The one set-up link: only its digest, and whether it was used. */
@Entity
@Table(name = "set_up_link")
class SetUpTicket {

	static final int ONLY = 1;

	@Id
	private int id = ONLY;

	private String tokenDigest;

	private Instant madeAt;

	private @Nullable Instant usedAt;

	/** For Hibernate. */
	@SuppressWarnings("NullAway")
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

	void refuseUsed() {
		if (this.usedAt != null) {
			throw new ConflictException("set-up-link-used",
					"This set-up link was used already. Sign in, or ask the administrator.");
		}
	}

	void use(Instant now) {
		refuseUsed();
		this.usedAt = now;
	}

}
