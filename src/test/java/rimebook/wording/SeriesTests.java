package rimebook.wording;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class SeriesTests {

	@Test
	void putsASignBetweenParts() {
		assertThat(Series.withCommas(List.of("A", "B, C", 4)).english()).isEqualTo("A, B, C, 4");
		assertThat(Series.withSemicolons(List.of("A", Sentence.of("figure.place", 2))).english()).isEqualTo("A; 2nd");
	}

	@Test
	void onePartStandsAloneAndNoneSaysNothing() {
		assertThat(Series.withCommas(List.of("A"))).isEqualTo(Sentence.said("A"));
		assertThat(Series.withCommas(List.of())).isEqualTo(Sentence.NONE);
	}

	@Test
	void saysAMomentWhereItIs() {
		ZonedDateTime moment = ZonedDateTime.of(2026, 2, 13, 14, 30, 0, 0, ZoneId.of("Europe/Helsinki"));
		assertThat(Moment.of(moment).english()).isEqualTo("13 Feb 14:30 EET");
		assertThat(Moment.of(moment.plusMonths(10)).english()).isEqualTo("13 Dec 14:30 EET");
	}

}
