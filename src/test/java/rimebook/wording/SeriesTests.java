package rimebook.wording;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

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

	/** JSON may nest 500 deep, Jackson's own bound. */
	@Test
	void manyPartsCanBeKeptAsJson() {
		for (int count : new int[] { 2, 3, 4, 5, 7, 600 }) {
			List<Integer> parts = IntStream.rangeClosed(1, count).boxed().toList();
			Sentence series = Series.withCommas(parts);
			assertThat(series.english())
				.isEqualTo(parts.stream().map(String::valueOf).collect(Collectors.joining(", ")));
			JsonMapper json = JsonMapper.builder().build();
			assertThat(json.readValue(json.writeValueAsString(series), Sentence.class)).isEqualTo(series);
		}
	}

	@Test
	void saysAMomentWhereItIs() {
		ZonedDateTime moment = ZonedDateTime.of(2026, 2, 13, 14, 30, 0, 0, ZoneId.of("Europe/Helsinki"));
		assertThat(Moment.of(moment).english()).isEqualTo("13 Feb 14:30 EET");
		assertThat(Moment.of(moment.plusMonths(10)).english()).isEqualTo("13 Dec 14:30 EET");
	}

}
