package rimebook.accounts;

import java.time.Instant;
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

	private String code;

	private Instant issuedAt;

	private @Nullable String deviceDigest;

	@Column(name = "device")
	private String device = "";

	private @Nullable Instant pairedAt;

	private @Nullable Instant lastHeardAt;

	private int waiting;

	private boolean faulty;

	/** For Hibernate. */
	@SuppressWarnings("NullAway")
	protected SeatCode() {
	}

	SeatCode(UUID seat, String label, String code, Instant now) {
		this.seatId = seat;
		this.label = label;
		this.code = code;
		this.issuedAt = now;
	}

	/** Replace the code; whatever tablet held the seat no longer does. */
	void reissue(String label, String code, Instant now) {
		this.label = label;
		this.code = code;
		this.issuedAt = now;
		this.deviceDigest = null;
		this.device = "";
		this.pairedAt = null;
		this.lastHeardAt = null;
		this.waiting = 0;
		this.faulty = false;
	}

	/** Give the seat to a tablet; one that held it before no longer does. */
	void pair(String digest, String device, Instant now) {
		this.deviceDigest = digest;
		this.device = device;
		this.pairedAt = now;
		this.lastHeardAt = now;
		this.waiting = 0;
		this.faulty = false;
	}

	/** Tell whether the tablet was heard at that time or later. */
	boolean wasHeardSince(Instant then) {
		return this.lastHeardAt != null && !this.lastHeardAt.isBefore(then);
	}

	boolean hasTold(int cards, boolean faulty) {
		return this.waiting == cards && this.faulty == faulty;
	}

	String code() {
		return this.code;
	}

	String deviceName() {
		return this.device;
	}

	SeatGrant grant() {
		return new SeatGrant(this.seatId, this.label);
	}

	SeatDevice device() {
		return new SeatDevice(this.pairedAt, this.lastHeardAt, this.device, this.waiting, this.faulty, this.issuedAt);
	}

}
