package rimebook.demo;

import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;

/**
 * The codes of seats that the demonstration offers to whoever comes. The service itself
 * shows a code only until a tablet has joined, and the simulated ones join at once.
 */
@Component
@Profile("demo")
class DemoCodes {

	private final Panels panels;

	private final Map<SeatId, Known> known = new ConcurrentHashMap<>();

	DemoCodes(Panels panels) {
		this.panels = panels;
	}

	/** The code of a seat, if it was seen since it was made. */
	Optional<String> of(SeatView seat) {
		if (seat.code() != null) {
			this.known.put(seat.id(), new Known(seat.code(), seat.access().codeIssuedAt()));
		}
		return Optional.ofNullable(this.known.get(seat.id()))
			.filter((one) -> Objects.equals(one.issuedAt(), seat.access().codeIssuedAt()))
			.map(Known::code);
	}

	/** The code of a seat; a new one if that is not known, as after a start. */
	String orNew(SeatView seat) {
		return of(seat).orElseGet(() -> of(this.panels.issueCode(seat.id(), DemoCrew.REFEREE)).orElseThrow());
	}

	private record Known(String code, @Nullable Instant issuedAt) {
	}

}
