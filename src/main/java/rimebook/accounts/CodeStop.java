package rimebook.accounts;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.shared.Actor;

/** An address that was stopped from guessing seat codes. */
@Entity
@Table(name = "code_stop")
class CodeStop {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	private String address;

	private String device;

	private Instant stoppedAt;

	private Instant stoppedUntil;

	private @Nullable Instant freedAt;

	private String freedBy = "";

	/** For Hibernate. */
	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected CodeStop() {
	}

	CodeStop(UUID id, String address, String device, Instant now, Instant until) {
		this.id = id;
		this.address = address;
		this.device = device;
		this.stoppedAt = now;
		this.stoppedUntil = until;
	}

	boolean isStopped(Instant now) {
		return this.freedAt == null && this.stoppedUntil.isAfter(now);
	}

	void free(Actor actor, Instant now) {
		this.freedAt = now;
		this.freedBy = actor.name();
	}

	String address() {
		return this.address;
	}

	Instant until() {
		return this.stoppedUntil;
	}

	/** Changes with each stop and each freeing: what failed before counts no more. */
	String turn() {
		return this.id + ((this.freedAt != null) ? " freed" : "");
	}

	CodeGuessing.GuessedFrom view(Instant now) {
		return new CodeGuessing.GuessedFrom(this.id, this.address, this.device,
				new CodeGuessing.GuessedFrom.Stop(this.stoppedAt, this.stoppedUntil, isStopped(now)), this.freedBy);
	}

}
