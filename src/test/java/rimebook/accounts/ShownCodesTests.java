package rimebook.accounts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class ShownCodesTests {

	private static final Instant NOW = Instant.parse("2026-11-28T09:00:00Z");

	private static final UUID SEAT = UUID.randomUUID();

	private final ShownCodes codes = new ShownCodes(Clock.fixed(NOW, ZoneOffset.UTC));

	@Test
	void onlyTheCodeThatWasMadeThenIsShown() {
		this.codes.show(SEAT, "ACDEFGHJ", NOW);
		assertThat(this.codes.find(SEAT, NOW)).contains("ACDEFGHJ");
		assertThat(this.codes.find(SEAT, NOW.plusMillis(1))).as("made on another node since").isEmpty();
		assertThat(this.codes.find(UUID.randomUUID(), NOW)).isEmpty();
		this.codes.hide(SEAT);
		assertThat(this.codes.find(SEAT, NOW)).isEmpty();
	}

	@Test
	void afterADayItIsShownNoLonger() {
		Instant yesterday = NOW.minus(Duration.ofDays(1));
		this.codes.show(SEAT, "ACDEFGHJ", yesterday);
		assertThat(this.codes.find(SEAT, yesterday)).isEmpty();
		this.codes.show(SEAT, "ACDEFGHJ", yesterday.plusMillis(1));
		assertThat(this.codes.find(SEAT, yesterday.plusMillis(1))).isPresent();
	}

	@Test
	void theOldestGoWhenThereAreTooMany() {
		this.codes.show(SEAT, "ACDEFGHJ", NOW);
		for (int i = 1; i < ShownCodes.MOST; i++) {
			this.codes.show(UUID.randomUUID(), "CDEFGHJK", NOW);
		}
		assertThat(this.codes.find(SEAT, NOW)).isPresent();
		this.codes.show(UUID.randomUUID(), "CDEFGHJK", NOW);
		assertThat(this.codes.find(SEAT, NOW)).isEmpty();
	}

}
