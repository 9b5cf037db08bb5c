package rimebook.panels;

import java.util.List;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.accounts.SeatCodes;
import rimebook.competition.EventId;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

@Entity
class Seat {

	@Id
	private UUID id;

	@Version
	private int version;

	private UUID eventId;

	@Enumerated(EnumType.STRING)
	private SeatKind kind;

	private int number;

	@ManyToOne(fetch = FetchType.LAZY)
	private @Nullable Official official;

	private String overrideReason = "";

	private @Nullable String overrideGrounds;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Seat() {
	}

	Seat(UUID id, EventId event, SeatPlace place) {
		this.id = id;
		this.eventId = event.value();
		this.kind = place.kind();
		this.number = place.number();
	}

	void take(Official official, Allowance allowance) {
		Official sitting = this.official;
		if (sitting != null) {
			throw new ConflictException("seat-taken", "official",
					Sentence.of("panels.seat-taken", spoken(), sitting.view().name()));
		}
		this.official = official;
		write(allowance);
	}

	/** Set aside what binds whoever sits here. */
	void allow(int version, Allowance allowance) {
		ConflictException.requireSeen("seat", version, this.version);
		write(allowance);
	}

	private void write(Allowance allowance) {
		this.overrideReason = allowance.reason();
		this.overrideGrounds = KeptBonds.written(allowance.grounds());
	}

	/** Those of the bonds that nobody has set aside. */
	List<Sentence> unsettled(List<Sentence> grounds) {
		if (this.overrideReason.isEmpty()) {
			return grounds;
		}
		String known = this.overrideGrounds;
		return (known != null) ? KeptBonds.without(known, grounds) : List.of();
	}

	void vacate(int version) {
		ConflictException.requireSeen("seat", version, this.version);
		if (this.official == null) {
			throw new ConflictException("seat-empty", Sentence.of("panels.seat-empty", spoken()));
		}
		this.official = null;
		write(Allowance.NONE);
	}

	boolean isAt(SeatPlace place) {
		return place().equals(place);
	}

	boolean isTakenBy(OfficialView.Id id) {
		return this.official != null && this.official.id().equals(id);
	}

	boolean isTaken() {
		return this.official != null;
	}

	SeatPlace place() {
		return new SeatPlace(this.kind, this.number);
	}

	Sentence spoken() {
		return place().spoken();
	}

	String label() {
		return place().label();
	}

	SeatId id() {
		return new SeatId(this.id);
	}

	EventId event() {
		return new EventId(this.eventId);
	}

	@Nullable Official official() {
		return this.official;
	}

	SeatView view(SeatCodes.Access access) {
		SeatCodes.Device device = access.device();
		return new SeatView(id(), event(), new SeatPlace(this.kind, this.number),
				new SeatView.Occupant((this.official != null) ? this.official.view() : null, this.overrideReason,
						this.version),
				new SeatView.Access(access.shownCode(), device.issuedAt()),
				new SeatView.Tablet(device.pairedAt(), device.lastHeardAt(), device.waiting(), device.faulty()));
	}

	/**
	 * That somebody may sit in judgement although they are bound.
	 *
	 * @param reason why, empty where nothing binds them
	 * @param grounds the bonds that were known when it was given
	 */
	record Allowance(String reason, List<Sentence> grounds) {

		static final Allowance NONE = new Allowance("", List.of());

		Allowance {
			grounds = List.copyOf(grounds);
		}

	}

}
