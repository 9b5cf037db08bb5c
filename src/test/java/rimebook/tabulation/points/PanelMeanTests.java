package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class PanelMeanTests {

	private static final int[] MARKS = { 1, 2, 5, 13, 6, 15, 38, 47, 123 };

	/** Small panels use every mark: common practice. */
	@Test
	void usesEveryMarkBelowTheThreshold() {
		PanelMean mean = mean(100, 200, 300, 400);
		assertThat(mean.divisor()).isEqualTo(4);
		assertThat(mean.dropped()).isEmpty();
		assertThat(mean.mean()).isEqualTo(new Points(250));
		assertThat(mean.working()).isEqualTo("1.00 + 2.00 + 3.00 + 4.00 = 10.00; 10.00 / 4 = 2.50, rounded 2.50");
	}

	/**
	 * Five count 3, seven 5, eight 6, nine 7; below five all count (Skate Canada,
	 * Official Regulations, section 105, 1.4 and 1.5).
	 */
	@ParameterizedTest
	@CsvSource({ "3,3,2.67", "4,4,5.25", "5,3,4.33", "6,4,6.50", "7,5,8.20", "8,6,13.17", "9,7,18.00" })
	void panelsOfThreeToNineCountAllOrAllButTwo(int judges, int counted, String mean) {
		Integer[] marks = IntStream.range(0, judges).mapToObj((judge) -> 100 * MARKS[judge]).toArray(Integer[]::new);
		assertThat(mean(marks).divisor()).isEqualTo(counted);
		assertThat(mean(marks).mean()).hasToString(mean);
	}

	/**
	 * Trimmed mean: ISU page "Figure skating rules" as quoted in February 2026; the
	 * threshold of five is common practice.
	 */
	@Test
	void dropsOneHighestAndOneLowestFromTheThresholdOn() {
		PanelMean mean = mean(100, 500, 300, 400, 200);
		assertThat(uses(mean)).containsExactly(PanelMean.MarkUse.DROPPED_LOWEST, PanelMean.MarkUse.DROPPED_HIGHEST,
				PanelMean.MarkUse.COUNTED, PanelMean.MarkUse.COUNTED, PanelMean.MarkUse.COUNTED);
		assertThat(mean.countedJudges()).containsExactly(3, 4, 5);
		assertThat(mean.dropped()).extracting(PanelMean.PanelMark::judge).containsExactly(1, 2);
		assertThat(mean.sum()).isEqualTo(new Points(900));
	}

	/**
	 * One highest and one lowest are left out, whatever others are equal to them: Skate
	 * Canada, article 105, paragraphs 1.4 and 1.5 (before 2018), and STARSkate CPC
	 * Calculation Principles 2005-2006.
	 */
	@Test
	void dropsOneCopyOnlyOfEqualMarks() {
		PanelMean mean = mean(300, 300, 300, 300, 300);
		assertThat(mean.countedJudges()).containsExactly(2, 3, 4);
		assertThat(mean(100, 100, 200, 300, 300).sum()).isEqualTo(new Points(600));
	}

	/** An absent mark is none, never 0: common practice of published detail pages. */
	@Test
	void leavesAbsentMarksOutOfTheCount() {
		PanelMean mean = mean(null, 100, 500, null, 300, 400, 200);
		assertThat(mean.divisor()).isEqualTo(3);
		assertThat(uses(mean)).startsWith(PanelMean.MarkUse.ABSENT, PanelMean.MarkUse.DROPPED_LOWEST,
				PanelMean.MarkUse.DROPPED_HIGHEST, PanelMean.MarkUse.ABSENT);
		assertThat(mean(null, 100, 500, 300, 400).dropped()).isEmpty();
		assertThat(mean.marks()).hasSize(7).extracting(PanelMean.PanelMark::judge).containsExactly(1, 2, 3, 4, 5, 6, 7);
	}

	@Test
	void oneMarkIsItsOwnMean() {
		assertThat(mean(null, 425).mean()).isEqualTo(new Points(425));
		assertThat(mean(425).working()).isEqualTo("4.25; 4.25 / 1 = 4.25, rounded 4.25");
	}

	/**
	 * From five marks on: Skate Canada, article 105, paragraph 1.5 (before 2018). Other
	 * thresholds are a setting, since rules of other years may differ: common practice.
	 */
	@Test
	void thresholdIsARule() {
		assertThat(PanelMean.of(marks(100, 200, 600), 3).mean()).isEqualTo(new Points(200));
		assertThat(PanelMean.of(marks(100, 200, 300, 400, 1000), 6).mean()).isEqualTo(new Points(400));
	}

	@Test
	void showsTheQuotientBeforeItIsRounded() {
		assertThat(Stream.of(mean(100, 100, 200), mean(-100, -100, -200), mean(25, 25, 50, 25), mean(100, 200)))
			.extracting(PanelMean::quotient)
			.containsExactly("1.333333…", "-1.333333…", "0.3125", "1.50");
	}

	private static List<PanelMean.MarkUse> uses(PanelMean mean) {
		return mean.marks().stream().map(PanelMean.PanelMark::use).toList();
	}

	private static PanelMean mean(@Nullable Integer... hundredths) {
		return PanelMean.of(marks(hundredths), 5);
	}

	private static List<@Nullable Points> marks(@Nullable Integer... hundredths) {
		List<@Nullable Points> marks = new ArrayList<>();
		for (Integer mark : hundredths) {
			marks.add((mark == null) ? null : new Points(mark));
		}
		return marks;
	}

}
