package rimebook.panels.web;

import java.time.Instant;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class HeardTests {

	private static final Instant NOW = Instant.parse("2027-02-13T12:00:00Z");

	@ParameterizedTest
	@CsvSource({ "-5, now, 0", "0, now, 0", "44, now, 0", "45, minutes, 1", "119, minutes, 1", "120, minutes, 2",
			"3599, minutes, 59", "3600, hours, 1", "86399, hours, 23", "86400, days, 1", "300000, days, 3" })
	void saysHowLongAgoInTheUnitThatFits(long seconds, String unit, long amount) {
		assertThat(Heard.of(NOW.minusSeconds(seconds), NOW)).isEqualTo(new Heard("panels.heard." + unit, amount));
	}

}
