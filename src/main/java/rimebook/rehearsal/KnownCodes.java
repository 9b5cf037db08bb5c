package rimebook.rehearsal;

import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.jspecify.annotations.Nullable;

import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;

/**
 * The codes of seats, for the simulated tablets and for whoever wants to sit beside them.
 * The service itself shows a code only until a tablet has joined, and the simulated ones
 * join at once.
 */
public class KnownCodes {

	private final Panels panels;

	private final PanelCast cast;

	private final Map<SeatId, Known> known = new ConcurrentHashMap<>();

	KnownCodes(Panels panels, PanelCast cast) {
		this.panels = panels;
		this.cast = cast;
	}

	/** The code of a seat, if it was seen since it was made. */
	public Optional<String> of(SeatView seat) {
		if (seat.code() != null) {
			this.known.put(seat.id(), new Known(seat.code(), seat.access().codeIssuedAt()));
		}
		return Optional.ofNullable(this.known.get(seat.id()))
			.filter((one) -> Objects.equals(one.issuedAt(), seat.access().codeIssuedAt()))
			.map(Known::code);
	}

	/** The code of a seat; a new one if that is not known, as after a start. */
	public String orNew(SeatView seat) {
		return of(seat).orElseGet(() -> of(this.panels.issueCode(seat.id(), this.cast.referee())).orElseThrow());
	}

	private record Known(String code, @Nullable Instant issuedAt) {
	}

}
