package rimebook.accounts;

import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

/** The code of one seat and the tablet that joined with it. */
@Entity
@Table(name = "seat_code")
class SeatCode {

	@Id
	private UUID seatId;

	@Version
	private @Nullable Integer version;

	private String label;

	private String codeDigest;

	private Instant issuedAt;

	private @Nullable String deviceDigest;

	@Column(name = "device")
	private String device = "";

	private @Nullable Instant pairedAt;

	private @Nullable Instant lastHeardAt;

	private int waiting;

	private boolean faulty;

	private @Nullable String askedDigest;

	private String askedDevice = "";

	private @Nullable Instant askedAt;

	private boolean askedRefused;

	/** For Hibernate. */
	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected SeatCode() {
	}

	SeatCode(UUID seat, String label, String codeDigest, Instant now) {
		this.seatId = seat;
		this.label = label;
		this.codeDigest = codeDigest;
		this.issuedAt = now;
	}

	/** Replace the code; whatever tablet held the seat no longer does. */
	void reissue(String label, String codeDigest, Instant now) {
		this.label = label;
		this.codeDigest = codeDigest;
		this.issuedAt = now;
		this.deviceDigest = null;
		this.device = "";
		this.pairedAt = null;
		this.lastHeardAt = null;
		this.waiting = 0;
		this.faulty = false;
		forgetQuestion();
	}

	/** Give the seat to a tablet; one that held it before no longer does. */
	void pair(String digest, String device, Instant now) {
		this.deviceDigest = digest;
		this.device = device;
		this.pairedAt = now;
		this.lastHeardAt = now;
		this.waiting = 0;
		this.faulty = false;
		forgetQuestion();
	}

	/** Let another tablet ask for the seat; whichever asked before does no longer. */
	void ask(String digest, String device, Instant now) {
		this.askedDigest = digest;
		this.askedDevice = device;
		this.askedAt = now;
		this.askedRefused = false;
	}

	/** Give the seat to the tablet that asks for it. */
	void giveToAsking(Instant now) {
		pair(Objects.requireNonNull(this.askedDigest), this.askedDevice, now);
	}

	/** Keep that the referee said no, so that the tablet is told. */
	void refuseAsking() {
		this.askedRefused = true;
	}

	private void forgetQuestion() {
		this.askedDigest = null;
		this.askedDevice = "";
		this.askedAt = null;
		this.askedRefused = false;
	}

	boolean isAskedRefused() {
		return this.askedRefused;
	}

	/** Tell whether a tablet asked at that moment and waits for an answer. */
	boolean isAskedSince(Instant moment) {
		return this.askedAt != null && !this.askedRefused && this.askedAt.equals(moment);
	}

	/** Tell whether that tablet asked after a time and waits for an answer. */
	boolean isAskedBy(String digest, Instant then) {
		return digest.equals(this.askedDigest) && this.askedAt != null && !this.askedRefused
				&& this.askedAt.isAfter(then);
	}

	SeatTakeovers.Question question() {
		return new SeatTakeovers.Question(this.seatId, this.label, this.askedDevice,
				Objects.requireNonNull(this.askedAt), this.device, this.lastHeardAt);
	}

	/** Tell whether a tablet holds the seat and was heard at that time or later. */
	boolean isLive(Instant then) {
		return this.deviceDigest != null && wasHeardSince(then);
	}

	boolean isHeldBy(String digest) {
		return digest.equals(this.deviceDigest);
	}

	/** Tell whether the tablet was heard at that time or later. */
	boolean wasHeardSince(Instant then) {
		return this.lastHeardAt != null && !this.lastHeardAt.isBefore(then);
	}

	boolean hasTold(int cards, boolean faulty) {
		return this.waiting == cards && this.faulty == faulty;
	}

	Instant issuedAt() {
		return this.issuedAt;
	}

	String deviceName() {
		return this.device;
	}

	SeatCodes.Grant grant() {
		return new SeatCodes.Grant(this.seatId, this.label);
	}

	SeatCodes.Device device() {
		return new SeatCodes.Device(this.pairedAt, this.lastHeardAt, this.device, this.waiting, this.faulty,
				this.issuedAt);
	}

}
