package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;

import org.apache.commons.math3.stat.StatUtils;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** What holds for every panel, tried on generated ones; a seed makes each repeatable. */
class PointsPropertiesTests {

	private static final int TRIES = 1000;

	private final RandomPerformances performances = new RandomPerformances(new Random(20_250_701));

	private final Random random = new Random(1);

	@Test
	void orderOfEntriesIsIrrelevant() {
		for (int i = 0; i < TRIES; i++) {
			List<Performance> entries = this.performances.next(8, 1 + i % 9);
			assertThat(standing(this.performances.shuffled(entries))).isEqualTo(standing(entries));
		}
	}

	@Test
	void orderOfJudgesIsIrrelevant() {
		for (int i = 0; i < TRIES; i++) {
			int judges = 1 + i % 9;
			Performance entry = this.performances.next("A", judges);
			List<Integer> seats = this.performances.shuffled(IntStream.range(0, judges).boxed().toList());
			Performance reseated = Performance.skated("A",
					entry.elements()
						.stream()
						.map((element) -> new JudgedElement(element.number(), element.code(), element.worth(), null,
								reseated(element.grades(), seats)))
						.toList(),
					entry.components()
						.stream()
						.map((component) -> new JudgedComponent(component.name(), reseated(component.marks(), seats)))
						.toList(),
					entry.deductions());
			PerformanceScore before = score(entry);
			PerformanceScore after = score(reseated);
			assertThat(after.total()).isEqualTo(before.total());
			assertThat(after.elementPoints()).isEqualTo(before.elementPoints());
			assertThat(after.componentPoints()).isEqualTo(before.componentPoints());
		}
	}

	private static <T> List<@Nullable T> reseated(List<@Nullable T> marks, List<Integer> seats) {
		List<@Nullable T> reseated = new ArrayList<>();
		seats.forEach((seat) -> reseated.add(marks.get(seat)));
		return reseated;
	}

	/** From three marks on, one more at each end is dropped and changes nothing. */
	@Test
	void addingADroppedMarkAtEachEndChangesNothing() {
		for (int i = 0; i < TRIES; i++) {
			List<@Nullable Points> marks = marks(3 + i % 2);
			PanelMean plain = PanelMean.of(marks, 5);
			marks.add(this.random.nextInt(marks.size()), new Points(10_000 + this.random.nextInt(3)));
			marks.add(this.random.nextInt(marks.size()), new Points(-10_000 - this.random.nextInt(3)));
			PanelMean trimmed = PanelMean.of(marks, 5);
			assertThat(trimmed.mean()).isEqualTo(plain.mean());
			assertThat(trimmed.sum()).isEqualTo(plain.sum());
			assertThat(trimmed.quotient()).isEqualTo(plain.quotient());
		}
	}

	@Test
	void makingADroppedMarkMoreExtremeChangesNothing() {
		for (int i = 0; i < TRIES; i++) {
			List<@Nullable Points> marks = marks(5 + i % 5);
			PanelMean before = PanelMean.of(marks, 5);
			for (PanelMean.PanelMark dropped : before.dropped()) {
				int extreme = (dropped.use() == PanelMean.MarkUse.DROPPED_HIGHEST) ? 10_000 : -10_000;
				marks.set(dropped.judge() - 1, new Points(extreme));
			}
			assertThat(PanelMean.of(marks, 5).sum()).isEqualTo(before.sum());
		}
	}

	@Test
	void aHigherGradeNeverLowersAScore() {
		int raised = 0;
		for (int i = 0; i < TRIES; i++) {
			Performance entry = this.performances.next("A", 1 + i % 9);
			for (JudgedElement element : entry.elements()) {
				int judge = this.random.nextInt(element.grades().size());
				Integer grade = element.grades().get(judge);
				if (grade != null && grade < 5) {
					List<@Nullable Integer> grades = new ArrayList<>(element.grades());
					grades.set(judge, grade + 1);
					Points before = PerformanceScore.ElementScore.of(PublishedRules.SHORT, element).score();
					Points after = PerformanceScore.ElementScore
						.of(PublishedRules.SHORT, JudgedElement.of(1, element.code(), grades.toArray(Integer[]::new)))
						.score();
					assertThat(after).isGreaterThanOrEqualTo(before);
					raised += after.equals(before) ? 0 : 1;
				}
			}
		}
		assertThat(raised).isGreaterThan(TRIES / 2);
	}

	@Test
	void meanLiesBetweenTheMarksThatCountAndAgreesWithCommonsMath() {
		for (int i = 0; i < TRIES; i++) {
			List<@Nullable Points> marks = marks(1 + i % 12);
			PanelMean mean = PanelMean.of(marks, 5);
			double[] counted = mean.marks()
				.stream()
				.filter(PanelMean.PanelMark::isCounted)
				.mapToDouble((mark) -> Objects.requireNonNull(mark.points()).hundredths())
				.toArray();
			assertThat(counted).hasSize((marks.size() < 5) ? marks.size() : marks.size() - 2);
			assertThat((double) mean.mean().hundredths()).isBetween(Arrays.stream(counted).min().orElseThrow(),
					Arrays.stream(counted).max().orElseThrow());
			assertThat((double) mean.mean().hundredths()).isCloseTo(StatUtils.mean(counted), within(0.5 + 1e-9));
		}
	}

	@Test
	void placesCountTheTeamsAhead() {
		for (int i = 0; i < TRIES; i++) {
			List<PointsStanding.ScoredEntry> rows = standing(this.performances.next(8, 2)).rows();
			for (PointsStanding.ScoredEntry row : rows) {
				long ahead = rows.stream().filter((other) -> isAhead(other, row)).count();
				assertThat(row.place()).isEqualTo((int) ahead + 1);
			}
		}
	}

	private static boolean isAhead(PointsStanding.ScoredEntry one, PointsStanding.ScoredEntry other) {
		PerformanceScore left = Objects.requireNonNull(one.score());
		PerformanceScore right = Objects.requireNonNull(other.score());
		int compared = left.total().compareTo(right.total());
		return (compared != 0) ? compared > 0 : left.elementPoints().compareTo(right.elementPoints()) > 0;
	}

	@Test
	void totalIsTheSumOfWhatIsPrinted() {
		for (int i = 0; i < TRIES; i++) {
			PerformanceScore score = score(this.performances.next("A", 1 + i % 9));
			int sum = score.elements().stream().mapToInt((element) -> element.score().hundredths()).sum()
					+ score.components().stream().mapToInt((component) -> component.points().hundredths()).sum()
					- score.deductions().stream().mapToInt((deduction) -> deduction.points().hundredths()).sum();
			assertThat(score.total()).isEqualTo(new Points(sum));
		}
	}

	private List<@Nullable Points> marks(int count) {
		List<@Nullable Points> marks = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			marks.add(new Points(this.random.nextInt(800) - 400));
		}
		return marks;
	}

	private static PointsStanding standing(List<Performance> entries) {
		return PointsTabulation.standing(PublishedRules.SHORT, entries);
	}

	private static PerformanceScore score(Performance entry) {
		return PointsTabulation.score(PublishedRules.SHORT, entry);
	}

}
