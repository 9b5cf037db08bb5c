package rimebook.tabulation.points;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.ranking.NaNStrategy;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;
import org.junit.jupiter.api.Test;

import rimebook.tabulation.SegmentKind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Every published figure of 18 competitions and an Olympic event of 2016 to 2018. The
 * data set is not part of this repository: where the property {@code rimebook.reference}
 * does not lead to it, the test says so and checks nothing.
 */
class ReferenceScoresTests {

	private static final Path FOLDER = Path.of(System.getProperty("rimebook.reference", "reference"), "points",
			"not-to-be-committed");

	private final Map<String, Integer> checked = new TreeMap<>();

	private final Map<String, SeasonValues> values = new LinkedHashMap<>();

	@Test
	void everyPublishedFigureIsReproduced() {
		if (!Files.isDirectory(FOLDER)) {
			System.out.println("REFERENCE SCORES ABSENT: " + FOLDER + " not found, no published score was checked");
			return;
		}
		List<PublishedSheet> sheets = Stream.of("protocols-2016-2017", "olympics-2018")
			.flatMap((name) -> new SheetFolder(FOLDER.resolve(name)).sheets().stream())
			.toList();
		Map<String, List<PublishedSheet>> segments = sheets.stream()
			.collect(Collectors.groupingBy(PublishedSheet::segment, LinkedHashMap::new, Collectors.toList()));
		segments.values().forEach(this::checkSegment);
		System.out.println("REFERENCE SCORES: " + segments.size() + " segments, all equal: " + this.checked);
		assertThat(segments).hasSize(168);
		assertThat(this.checked).isEqualTo(Map.of("element scores", 17_357, "elements without value", 100,
				"component means", 9880, "totals of elements, of components and of the segment, each", 1976, "ranks",
				1976, "ranks decided by a tie rule or shared", 8, "means compared with Commons Math", 27_237,
				"ranks compared with Commons Math", 1968));
	}

	private void checkSegment(List<PublishedSheet> sheets) {
		SegmentRules rules = rules(sheets);
		PointsStanding standing = PointsTabulation.standing(rules,
				sheets.stream().map(PublishedSheet::performance).toList());
		for (PublishedSheet sheet : sheets) {
			PointsStanding.ScoredEntry row = standing.row(sheet.entry()).orElseThrow();
			checkScore(sheet, Objects.requireNonNull(row.score()));
			assertThat(row.place()).as(sheet::toString).isEqualTo(sheet.rank());
			count("ranks");
			if (row.shared() || row.why().english().contains("same total")) {
				count("ranks decided by a tie rule or shared");
			}
		}
		checkRankingByOthers(sheets, standing);
	}

	private SegmentRules rules(List<PublishedSheet> sheets) {
		PublishedSheet first = sheets.get(0);
		SeasonValues season = this.values.computeIfAbsent(first.season() + first.isIceDance(),
				(key) -> new SeasonValues(FOLDER.resolve("values-2016-2018"), first.season(), first.isIceDance()));
		Map<String, ElementValue> table = new LinkedHashMap<>();
		sheets.stream()
			.flatMap((sheet) -> sheet.elements().stream())
			.filter(PublishedSheet.Element::hasValue)
			.forEach((element) -> table.computeIfAbsent(element.code(), season::value));
		return SegmentRules.usual(new ValueTable(ElementValue.GradeRange.SEVEN_GRADES, table),
				first.components().stream().map(PublishedSheet.Component::rule).toList(),
				(first.kind() == SegmentKind.SHORT) ? SegmentRules.TieBreak.ELEMENTS
						: SegmentRules.TieBreak.COMPONENTS);
	}

	private void checkScore(PublishedSheet sheet, PerformanceScore score) {
		for (int i = 0; i < sheet.elements().size(); i++) {
			PublishedSheet.Element element = sheet.elements().get(i);
			PerformanceScore.ElementScore made = score.elements().get(i);
			assertThat(made.grade()).as(() -> sheet + " " + element).isEqualTo(element.grade());
			assertThat(made.score()).as(() -> sheet + " " + element).isEqualTo(element.score());
			count(element.hasValue() ? "element scores" : "elements without value");
			if (made.panel() != null) {
				checkMeanByOthers(made.panel());
			}
		}
		for (PublishedSheet.Component component : sheet.components()) {
			PerformanceScore.ComponentScore made = score.components()
				.stream()
				.filter((candidate) -> candidate.rule().name().equals(component.name()))
				.findFirst()
				.orElseThrow();
			assertThat(made.panel().mean()).as(() -> sheet + " " + component).isEqualTo(component.mean());
			checkMeanByOthers(made.panel());
			count("component means");
		}
		assertThat(score.elementPoints()).as(sheet::toString).isEqualTo(sheet.elementPoints());
		assertThat(score.componentPoints()).as(sheet::toString).isEqualTo(sheet.componentPoints());
		assertThat(score.total()).as(sheet::toString).isEqualTo(sheet.total());
		count("totals of elements, of components and of the segment, each");
	}

	/** Compare with Apache Commons Math: the mean of the marks between the extremes. */
	private void checkMeanByOthers(PanelMean panel) {
		double[] marks = panel.marks()
			.stream()
			.filter((mark) -> mark.points() != null)
			.mapToDouble((mark) -> mark.points().hundredths())
			.sorted()
			.toArray();
		double mean = (marks.length < 5) ? StatUtils.mean(marks) : StatUtils.mean(marks, 1, marks.length - 2);
		assertThat((double) panel.sum().hundredths() / panel.divisor()).isCloseTo(mean, within(1e-9));
		count("means compared with Commons Math");
	}

	private void checkRankingByOthers(List<PublishedSheet> sheets, PointsStanding standing) {
		double[] totals = sheets.stream().mapToDouble((sheet) -> -sheet.total().hundredths()).toArray();
		double[] ranks = new NaturalRanking(NaNStrategy.FAILED, TiesStrategy.MINIMUM).rank(totals);
		for (int i = 0; i < ranks.length; i++) {
			PointsStanding.ScoredEntry row = standing.row(sheets.get(i).entry()).orElseThrow();
			assertThat(row.place()).isGreaterThanOrEqualTo((int) ranks[i]);
			if (!row.why().english().contains("same total")) {
				assertThat(row.place()).isEqualTo((int) ranks[i]);
				count("ranks compared with Commons Math");
			}
		}
	}

	private void count(String figure) {
		this.checked.merge(figure, 1, Integer::sum);
	}

}
