package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Figures;
import rimebook.tabulation.Ranking;
import rimebook.tabulation.Placing;
import rimebook.tabulation.TabulationException;

/**
 * Points judging: from grades, marks and deductions to the standing of a segment.
 *
 * <p>
 * Each grade is turned into points by the table first; then one highest and one lowest
 * are left out, the others averaged and the mean rounded; with the base value this is the
 * score of the element. Marks of a component are averaged in the same way, rounded,
 * multiplied by its factor, rounded again and only then added. Teams are ordered by
 * higher total; equal totals by the tie-break of the rules; teams still equal share the
 * place, and the next places are not awarded.
 *
 * <p>
 * The result depends on the rules and the set of performances only, never on the order in
 * which they are given.
 */
public final class PointsTabulation {

	private static final Comparator<Performance> UNPLACED = Comparator.comparing(Performance::status)
		.thenComparing(Performance::entry);

	private final SegmentRules rules;

	private final Map<String, Performance> performances = new TreeMap<>();

	private final Map<String, PerformanceScore> scores = new TreeMap<>();

	private PointsTabulation(SegmentRules rules, List<Performance> performances) {
		this.rules = rules;
		performances.forEach((performance) -> this.performances.put(performance.entry(), performance));
		this.performances.values()
			.stream()
			.filter(Performance::isScored)
			.forEach((performance) -> this.scores.put(performance.entry(), score(rules, performance)));
	}

	/**
	 * Score one performance.
	 * @param rules of the segment
	 * @param performance with a mark for each component of the rules
	 * @return the score with all it was made of
	 * @throws TabulationException {@code unknown-code}, {@code grade-out-of-range},
	 * {@code component-missing} or {@code unknown-component}
	 */
	public static PerformanceScore score(SegmentRules rules, Performance performance) {
		performance.components().forEach((component) -> {
			if (rules.component(component.name()).isEmpty()) {
				throw Refusal.unknownComponent(performance.entry(), component.name());
			}
		});
		return PerformanceScore.of(
				performance.elements()
					.stream()
					.map((element) -> PerformanceScore.ElementScore.of(rules, element))
					.toList(),
				rules.components().stream().map((rule) -> component(rules, rule, performance)).toList(),
				performance.deductions(), rules.flooredAtZero());
	}

	private static PerformanceScore.ComponentScore component(SegmentRules rules, SegmentRules.ComponentRule rule,
			Performance performance) {
		JudgedComponent judged = performance.components()
			.stream()
			.filter((component) -> component.name().equals(rule.name()))
			.findFirst()
			.orElseThrow(() -> Refusal.missingComponent(performance.entry(), rule.name()));
		return PerformanceScore.ComponentScore.of(rule, PanelMean.of(judged.marks(), rules.trimFrom()));
	}

	/**
	 * Make the standing of a segment.
	 * @param rules of the segment
	 * @param performances of every team known so far, in any order; none marked is fine
	 * @return the standing
	 * @throws TabulationException as for one performance, {@code duplicate-entry} or
	 * {@code uneven-panel}
	 */
	public static PointsStanding standing(SegmentRules rules, List<Performance> performances) {
		Refusal.repeated(performances.stream().map(Performance::entry)).ifPresent((entry) -> {
			throw Refusal.duplicateEntry(entry);
		});
		return new PointsStanding(rules.tieBreak(), judges(performances),
				new PointsTabulation(rules, performances).rows());
	}

	private static int judges(List<Performance> performances) {
		List<Performance> marked = performances.stream()
			.filter(Performance::isMarked)
			.sorted(Comparator.comparing(Performance::entry))
			.toList();
		int judges = marked.stream().findFirst().map(Performance::judges).orElse(0);
		marked.stream().filter((performance) -> performance.judges() != judges).findFirst().ifPresent((uneven) -> {
			throw Refusal.unevenPanel(uneven.entry());
		});
		return judges;
	}

	private List<PointsStanding.ScoredEntry> rows() {
		List<PointsStanding.ScoredEntry> rows = new ArrayList<>();
		for (Ranking.Rank rank : Ranking.of(contenders(), disqualified())) {
			rows.add(row(Objects.requireNonNull(this.performances.get(rank.entry())), rank.placing()));
		}
		this.performances.values()
			.stream()
			.filter((performance) -> performance.status() != EntryStatus.SKATED)
			.sorted(UNPLACED)
			.forEach((performance) -> rows.add(row(performance, Placing.NONE)));
		return rows;
	}

	private List<Ranking.Contender> contenders() {
		boolean leaveGaps = this.rules.disqualifiedPlaces() != DisqualifiedPlaces.CLOSE_ALL_PLACES;
		return this.scores.entrySet()
			.stream()
			.filter((score) -> leaveGaps || !disqualified().contains(score.getKey()))
			.map((score) -> new Ranking.Contender(score.getKey(), measures(score.getValue())))
			.toList();
	}

	private Set<String> disqualified() {
		return this.performances.values()
			.stream()
			.filter((performance) -> performance.status() == EntryStatus.DISQUALIFIED)
			.map(Performance::entry)
			.collect(Collectors.toSet());
	}

	private List<Figures.Measure> measures(PerformanceScore score) {
		List<Figures.Measure> measures = new ArrayList<>();
		measures.add(new Figures.Measure(Criterion.TOTAL_POINTS, score.total().hundredths()));
		this.rules.tieBreak()
			.criterion()
			.ifPresent(
					(criterion) -> measures.add(new Figures.Measure(criterion, score.points(criterion).hundredths())));
		return measures;
	}

	private PointsStanding.ScoredEntry row(Performance performance, Placing placing) {
		return new PointsStanding.ScoredEntry(performance.entry(), performance.status(), placing,
				this.scores.get(performance.entry()));
	}

}
