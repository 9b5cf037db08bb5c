package rimebook.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;

import org.apache.commons.math3.stat.correlation.KendallsCorrelation;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.review.Panel.gave;

/** The figures of one judge, beside what others have published for the same numbers. */
class TallyTests {

	private static final int LIMIT = 50;

	private static final Offset<Double> EXACT = Offset.offset(1e-12);

	/** Source: docs.scipy.org, scipy.stats.kendalltau (SciPy 0.9 to 1.15), example. */
	@Test
	void kendallWithTiesIsThatOfSciPy() {
		Tally tally = beside(gave(12, 2, 1, 12, 2), gave(1, 4, 7, 1, 0));
		assertThat(tally.kendall()).isCloseTo(-0.47140452079103173, EXACT);
		assertThat(tally.pairs().tau()).isCloseTo(-0.47140452079103173, EXACT);
		assertThat(tally.pairs()).isEqualTo(new Pairs(2, 6, 1, 0, 1));
	}

	/** Source: docs.scipy.org, scipy.stats.spearmanr (SciPy 1.x), example. */
	@Test
	void spearmanWithTiesIsThatOfSciPy() {
		assertThat(beside(gave(1, 2, 3, 4, 5), gave(5, 6, 7, 8, 7)).spearman()).isCloseTo(0.8207826816681233, EXACT);
	}

	/**
	 * Source: stats.stackexchange.com, question 653196: exercise and optimism of fifteen
	 * people, ties in most pairs; SPSS has 0.617, the asker counts 49 pairs in the same
	 * order and 4 the other way round.
	 */
	@Test
	void kendallWithManyTiesIsThatOfSpss() {
		Tally tally = beside(gave(0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2),
				gave(0, 0, 0, 1, 1, 1, 1, 1, 2, 2, 2, 2, 1, 2, 1));
		assertThat(tally.pairs().same()).isEqualTo(49);
		assertThat(tally.pairs().reversed()).isEqualTo(4);
		assertThat(tally.kendall()).isCloseTo(0.617, Offset.offset(0.0005));
	}

	/**
	 * Source: data from the help page of R's cor.test, which has them from Hollander and
	 * Wolfe (1973), p. 187: lightness and panel scores of nine lots of tuna. R prints T =
	 * 26 and tau 0.4444444 (stat.ethz.ch, r-help, January 2003). Rho by hand: the squares
	 * of the differences of the ranks are 48 in all, 1 - 6 * 48 / (9 * 80).
	 */
	@Test
	void withoutTiesTheFiguresAreThoseOfR() {
		Tally tally = beside(gave(444, 459, 419, 533, 447, 441, 507, 452, 601),
				gave(26, 31, 25, 50, 36, 40, 52, 28, 38));
		assertThat(tally.pairs()).isEqualTo(new Pairs(26, 10, 0, 0, 0));
		assertThat(tally.kendall()).isCloseTo(16.0 / 36, EXACT);
		assertThat(tally.spearman()).isCloseTo(0.6, EXACT);
	}

	/**
	 * Worked by hand: the others of the first judge are on average 5.1, 5.0, 4.7 and 4.7;
	 * its 5.4, 4.9, 4.6 and 4.0 are 0.3, 0.1, 0.1 and 0.7 away, all but the first below.
	 */
	@Test
	void distancesAreFromTheAverageOfTheOthers() {
		List<MarkLine> lines = Panel.of(gave(540, 490, 460, 400), gave(500, 500, 480, 460), gave(520, 500, 460, 480));
		Tally tally = Tally.of(lines, 0, LIMIT);
		assertThat(tally.distance().marks()).isEqualTo(4);
		assertThat(tally.distance().meanAway()).isEqualTo(30);
		assertThat(tally.distance().meanAbove()).isEqualTo(-15);
		assertThat(tally.outlying()).isEqualTo(1);
		assertThat(tally.pairs()).isEqualTo(new Pairs(5, 0, 0, 1, 0));
		assertThat(tally.kendall()).isCloseTo(5 / Math.sqrt(5.0 * 6), EXACT);
	}

	@Test
	void aJudgesOwnMarksAreNeverInTheAverageBesideIt() {
		List<MarkLine> lines = Panel.of(gave(600, 0, 300), gave(500, 510, 520), gave(520, 500, 540));
		List<MarkLine> otherwise = Panel.of(gave(0, 600, 10), gave(500, 510, 520), gave(520, 500, 540));
		for (int line = 0; line < lines.size(); line++) {
			assertThat(lines.get(line).of(0).orElseThrow().average())
				.isEqualTo(otherwise.get(line).of(0).orElseThrow().average());
		}
	}

	@Test
	void severalThingsOfATeamAreOnePlaceInTheOrder() {
		List<MarkLine> lines = List.of(Panel.line("A", "1", gave(100, 200)), Panel.line("A", "2", gave(300, 200)),
				Panel.line("B", "1", gave(0, 100)), Panel.line("B", "2", gave(null, 500)));
		Tally tally = Tally.of(lines, 0, LIMIT);
		assertThat(tally.pairs()).isEqualTo(new Pairs(1, 0, 0, 0, 0));
		assertThat(tally.distance().marks()).isEqualTo(3);
		assertThat(tally.kendall()).isEqualTo(1.0);
	}

	/** The others' averages 1/3 and 2/6 of the same are level, whoever is missing. */
	@Test
	void averagesOverAnotherNumberOfJudgesAreLevelWhenTheyAreEqual() {
		List<MarkLine> lines = List.of(Panel.line("A", "", gave(10, 0, 0, 1)),
				Panel.line("B", "", gave(20, null, null, 1)), Panel.line("C", "", gave(30, 1, 1, 1)),
				Panel.line("D", "", gave(40, 1, null, 1)));
		assertThat(Tally.of(lines, 0, LIMIT).pairs()).isEqualTo(new Pairs(3, 0, 0, 3, 0));
	}

	@Test
	void whatCannotBeComparedSaysWhy() {
		assertThat(beside(gave(1), gave(2)).lack()).isEqualTo(Lack.ONE_TEAM);
		assertThat(beside(gave(5, 5, 5), gave(1, 2, 3)).lack()).isEqualTo(Lack.JUDGE_LEVEL);
		assertThat(beside(gave(1, 2, 3), gave(5, 5, 5)).lack()).isEqualTo(Lack.OTHERS_LEVEL);
		assertThat(beside(gave(5, 5, 5), gave(5, 5, 5)).lack()).isEqualTo(Lack.JUDGE_LEVEL);
		assertThat(beside(gave(null, null), gave(5, 6)).lack()).isEqualTo(Lack.NO_MARKS);
		assertThat(beside(gave(5, 6), gave(null, null)).lack()).isEqualTo(Lack.NO_OTHERS);
		assertThat(Tally.of(Panel.of(gave(5, 6)), 0, LIMIT).lack()).isEqualTo(Lack.NO_OTHERS);
	}

	@Test
	void ofTwoMarksNoneIsPointedOut() {
		assertThat(beside(gave(600, 500), gave(0, 500)).outlying()).isZero();
		assertThat(Tally.of(Panel.of(gave(600, 500), gave(0, 500), gave(0, 500)), 0, LIMIT).outlying()).isEqualTo(1);
	}

	/** 4.9 is far from the average of 4.8 and 3.9 only because of the 3.9. */
	@Test
	void oneOddMarkDoesNotMakeAnotherOneOdd() {
		List<MarkLine> lines = Panel.of(gave(480), gave(490), gave(390));
		assertThat(Tally.of(lines, 0, LIMIT).outlying()).isZero();
		assertThat(Tally.of(lines, 1, LIMIT).outlying()).isZero();
		assertThat(Tally.of(lines, 2, LIMIT).outlying()).isEqualTo(1);
	}

	/** Just at the limit: 5.5 beside 5.0 and 5.0. */
	@Test
	void theLimitItselfIsPointedOut() {
		assertThat(Tally.of(Panel.of(gave(550), gave(500), gave(500)), 0, LIMIT).outlying()).isEqualTo(1);
		assertThat(Tally.of(Panel.of(gave(540), gave(500), gave(500)), 0, LIMIT).outlying()).isZero();
	}

	@Test
	void twoJudgesHaveTheSameFigures() {
		List<MarkLine> lines = Panel.of(gave(10, 30, 20, 20), gave(10, 20, 20, 40));
		Tally one = Tally.of(lines, 0, LIMIT);
		Tally other = Tally.of(lines, 1, LIMIT);
		assertThat(one.kendall()).isEqualTo(other.kendall());
		assertThat(one.spearman()).isEqualTo(other.spearman());
		assertThat(one.distance().meanAbove()).isEqualTo(-Objects.requireNonNull(other.distance().meanAbove()));
	}

	/** Hundreds of panels, ties in most: counted pairs and the library say the same. */
	@Test
	void countedPairsAgreeWithTheLibraryAndNothingIsEverNotANumber() {
		Random random = new Random(20270213);
		int compared = 0;
		for (int run = 0; run < 500; run++) {
			List<MarkLine> lines = panel(random, 1 + random.nextInt(9), 2 + random.nextInt(6));
			for (int judge = 0; judge < lines.get(0).given().size(); judge++) {
				compared += check(Tally.of(lines, judge, LIMIT), lines, judge) ? 1 : 0;
			}
		}
		assertThat(compared).isGreaterThan(1000);
	}

	private static boolean check(Tally tally, List<MarkLine> lines, int judge) {
		if (tally.lack() != null) {
			assertThat(tally.kendall()).isNull();
			assertThat(tally.spearman()).isNull();
			return false;
		}
		List<Compared> compared = lines.stream().flatMap((line) -> line.of(judge).stream()).toList();
		double[] own = compared.stream().mapToDouble(Compared::given).toArray();
		double[] others = compared.stream().mapToDouble((one) -> one.average().doubleValue()).toArray();
		assertThat(tally.kendall()).isBetween(-1.0, 1.0)
			.isCloseTo(Objects.requireNonNull(tally.pairs().tau()), EXACT)
			.isCloseTo(new KendallsCorrelation().correlation(own, others), EXACT);
		assertThat(tally.spearman()).isBetween(-1 - 1e-12, 1 + 1e-12)
			.isCloseTo(new SpearmansCorrelation().correlation(own, others), EXACT);
		return true;
	}

	private static List<MarkLine> panel(Random random, int teams, int judges) {
		return IntStream.range(0, teams).mapToObj((team) -> {
			List<@Nullable Integer> given = new ArrayList<>();
			IntStream.range(0, judges)
				.forEach((judge) -> given.add((random.nextInt(12) == 0) ? null : 10 * random.nextInt(5)));
			return Panel.line("Team " + team, "", given);
		}).toList();
	}

	/**
	 * Sixty made-up panels with ties and missing marks, as another program has them; how
	 * the file was made stands in it.
	 */
	@ParameterizedTest
	@CsvFileSource(resources = "/review/agreement.csv", useHeadersInDisplayName = true)
	void figuresAreThoseOfAnotherProgram(int judge, double kendall, double spearman, String marks) {
		List<MarkLine> lines = new ArrayList<>();
		for (String team : marks.split(";")) {
			lines.add(Panel.line("Team " + lines.size(), "", team(team)));
		}
		Tally tally = Tally.of(lines, judge, LIMIT);
		assertThat(tally.kendall()).isCloseTo(kendall, EXACT);
		assertThat(tally.pairs().tau()).isCloseTo(kendall, EXACT);
		assertThat(tally.spearman()).isCloseTo(spearman, EXACT);
	}

	/** Two segments of three teams each have six pairs, not the fifteen of six teams. */
	@Test
	void segmentsAreAddedUpPairByPair() {
		Tally first = beside(gave(1, 2, 3), gave(10, 20, 30));
		Tally second = beside(gave(1, 2, 3), gave(30, 20, 10));
		Tally both = first.plus(second);
		assertThat(both.pairs()).isEqualTo(new Pairs(3, 3, 0, 0, 0));
		assertThat(both.kendall()).isZero();
		assertThat(both.spearman()).isZero();
		assertThat(both.distance().marks()).isEqualTo(6);
		assertThat(first.plus(first).plus(second).kendall()).isCloseTo(1.0 / 3, EXACT);
		assertThat(first.plus(first).plus(second).spearman()).isCloseTo(1.0 / 3, EXACT);
	}

	@Test
	void aSegmentWithoutFiguresLeavesThoseOfTheOther() {
		Tally one = beside(gave(1), gave(1));
		Tally figures = beside(gave(1, 2), gave(10, 20));
		for (Tally both : List.of(one.plus(figures), figures.plus(one))) {
			assertThat(both.lack()).isNull();
			assertThat(both.kendall()).isEqualTo(1.0);
			assertThat(both.spearman()).isEqualTo(1.0);
		}
		Tally level = beside(gave(5, 5), gave(1, 2)).plus(beside(gave(1, 2), gave(5, 5)));
		assertThat(level.lack()).isEqualTo(Lack.JUDGE_LEVEL);
		assertThat(level.kendall()).isNull();
		assertThat(level.spearman()).isNull();
	}

	@Test
	void onlyFullAgreementIsWrittenAsOne() {
		assertThat(JudgeLine.rounded(0.999)).isEqualTo(99);
		assertThat(JudgeLine.rounded(-0.999)).isEqualTo(-99);
		assertThat(JudgeLine.rounded(1 - 1e-16)).isEqualTo(100);
		assertThat(JudgeLine.rounded(-1.0000000000000002)).isEqualTo(-100);
		assertThat(JudgeLine.rounded(-0.004)).isZero();
		assertThat(JudgeLine.rounded(0.875)).isEqualTo(88);
		assertThat(JudgeLine.rounded(null)).isNull();
	}

	private static List<@Nullable Integer> team(String marks) {
		List<@Nullable Integer> given = new ArrayList<>();
		for (String mark : marks.split(" ")) {
			given.add(mark.equals(".") ? null : Integer.valueOf(mark));
		}
		return given;
	}

	/** The first judge's figures beside the second. */
	private static Tally beside(List<@Nullable Integer> judge, List<@Nullable Integer> other) {
		return Tally.of(Panel.of(judge, other), 0, LIMIT);
	}

}
