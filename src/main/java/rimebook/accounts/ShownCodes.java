package rimebook.accounts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;

/**
 * Codes and links that were made on this node and may still be shown, so that slips can
 * be printed: until a tablet has joined, the node stops or a day is over. In memory only;
 * whoever needs a code on paper later makes a new one.
 */
@Component
class ShownCodes {

	/** Ten panels of twelve, several times over. */
	static final int MOST = 1000;

	private static final Duration SHOWN = Duration.ofDays(1);

	private final Map<UUID, Code> codes = new LinkedHashMap<>();

	private final Clock clock;

	ShownCodes(Clock clock) {
		this.clock = clock;
	}

	/** Show it from now on; the oldest go when there are too many. */
	synchronized void show(UUID seat, String code, Instant issuedAt) {
		this.codes.remove(seat);
		this.codes.put(seat, new Code(code, issuedAt));
		if (this.codes.size() > MOST) {
			this.codes.remove(this.codes.keySet().iterator().next());
		}
	}

	/** The code of a seat that was issued then; empty if it is shown no longer. */
	synchronized Optional<String> find(UUID seat, Instant issuedAt) {
		return Optional.ofNullable(this.codes.get(seat))
			.filter((code) -> code.issuedAt().equals(issuedAt))
			.filter((code) -> issuedAt.plus(SHOWN).isAfter(this.clock.instant()))
			.map(Code::code);
	}

	synchronized void hide(UUID seat) {
		this.codes.remove(seat);
	}

	private record Code(String code, Instant issuedAt) {
	}

}
