package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Combination;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.EventStanding;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.points.EntryTotals;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.Performance;
import rimebook.tabulation.points.PerformanceScore;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsCombination;
import rimebook.tabulation.points.PointsEventStanding;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.PointsTabulation;
import rimebook.tabulation.points.SegmentRules;
import rimebook.wording.Sentence;

/**
 * Tabulates a published standing once more from the marks that stand in it, without
 * database or service: places, ordinals, figures, points and the sentences that explain
 * them have to be the same.
 */
public final class TabulatedAgain {

	private final Standing said;

	private final Map<String, String> teams;

	private TabulatedAgain(Standing said) {
		this.said = said;
		this.teams = said.rows()
			.stream()
			.collect(Collectors.toMap(Standing.Row::entry, Standing.Row::team, (a, b) -> a));
	}

	/**
	 * Tabulate a segment of placement judging.
	 * @return the teams whose rows differ, none where all is as it was published
	 * @throws rimebook.tabulation.TabulationException if its marks cannot be tabulated
	 */
	public static List<String> segment(PlacementRules rules, Standing said) {
		return new TabulatedAgain(said).segment(rules);
	}

	/** Combine the places of an event of placement judging, as {@link #segment}. */
	public static List<String> event(CombinationRules rules, Standing said) {
		return new TabulatedAgain(said).event(rules);
	}

	/** Score a segment of points judging, as {@link #segment}. */
	public static List<String> points(PointsRules rules, SegmentKind kind, String level, Standing said) {
		return new TabulatedAgain(said).points(rules, kind, level);
	}

	/** Add the points of an event up, as {@link #segment}. */
	public static List<String> pointsEvent(PointsRules rules, Standing said) {
		return new TabulatedAgain(said).pointsEvent(rules);
	}

	private List<String> segment(PlacementRules rules) {
		SegmentStanding again = placed(rules, this.said);
		return compared(again.rows(), PlacedEntry::entry,
				(row) -> (old) -> new Standing.Row(row.place(), row.shared(), old.previousPlace(), row.entry(),
						old.team(), old.club(), old.startNumber(), row.status().name(), SegmentComposer.cards(row),
						SegmentComposer.figures(row, again, rules), List.of(), null, why(old, row.why(this::team)),
						null, null));
	}

	static SegmentStanding placed(PlacementRules rules, Standing said) {
		return PlacementTabulation.ofCards(rules, said.rows().stream().map(TabulatedAgain::cards).toList());
	}

	private static EntryCards cards(Standing.Row row) {
		return new EntryCards(row.entry(), EntryStatus.valueOf(row.status()),
				row.cards().stream().map((card) -> new CardMarks(card.first(), card.second())).toList());
	}

	private List<String> event(CombinationRules rules) {
		EventStanding again = combined(rules, this.said);
		return compared(again.rows(), EventStanding.EventRow::entry,
				(row) -> (old) -> new Standing.Row(old.waits() ? null : row.place(), row.shared() && !old.waits(),
						old.previousPlace(), row.entry(), old.team(), old.club(), 0, old.status(), List.of(), List.of(),
						row.places(), row.total(), why(old, row.why(this::team)), null, null));
	}

	static EventStanding combined(CombinationRules rules, Standing said) {
		return Combination.combine(rules,
				said.rows()
					.stream()
					.map((row) -> new EntryPlaces(row.entry(), status(row), row.segmentPlaces()))
					.toList());
	}

	private static EntryStatus status(Standing.Row row) {
		return row.waits() ? EntryStatus.SKATED : EntryStatus.valueOf(row.status());
	}

	private List<String> points(PointsRules rules, SegmentKind kind, String level) {
		PointsStanding again = scored(rules, rules.segment(kind, level), this.said);
		Scores scores = new Scores(rules);
		return compared(again.rows(), PointsStanding.ScoredEntry::entry, (row) -> (old) -> {
			PerformanceScore score = row.score();
			return new Standing.Row(row.place(), row.shared(), old.previousPlace(), row.entry(), old.team(), old.club(),
					old.startNumber(), row.status().name(), List.of(), List.of(), List.of(),
					(score != null) ? score.total().hundredths() : null, why(old, row.why(this::team)),
					(score != null) ? scores.of(score) : null, null);
		});
	}

	static PointsStanding scored(PointsRules rules, SegmentRules segment, Standing said) {
		return PointsTabulation.standing(segment, said.rows().stream().map((row) -> performance(rules, row)).toList());
	}

	private static Performance performance(PointsRules rules, Standing.Row row) {
		Standing.Score score = row.score();
		EntryStatus status = EntryStatus.valueOf(row.status());
		if (score == null) {
			return Performance.without(row.entry(), status);
		}
		return new Performance(row.entry(), status, score.elementLines().stream().map(TabulatedAgain::element).toList(),
				score.componentLines()
					.stream()
					.map((line) -> new JudgedComponent(line.name(), marks(line.marks())))
					.toList(),
				score.deductionLines()
					.stream()
					.map((line) -> rules.deduction(line.item()).orElseThrow().take(line.count(), ""))
					.toList());
	}

	/** Whoever called it may have given it another base value than the table has. */
	private static JudgedElement element(Standing.Score.ElementLine line) {
		JudgedElement.ElementWorth worth = JudgedElement.ElementWorth.valueOf(line.worth());
		return new JudgedElement(line.number(), line.code(), worth,
				(worth == JudgedElement.ElementWorth.COUNTS) ? new Points(line.base()) : null, grades(line.grades()));
	}

	private static List<@Nullable Integer> grades(List<Standing.Score.Mark> marks) {
		List<@Nullable Integer> grades = new ArrayList<>();
		marks.forEach((mark) -> grades.add(mark.given()));
		return grades;
	}

	private static List<@Nullable Points> marks(List<Standing.Score.Mark> marks) {
		List<@Nullable Points> points = new ArrayList<>();
		for (Standing.Score.Mark mark : marks) {
			Integer given = mark.given();
			points.add((given != null) ? new Points(given) : null);
		}
		return points;
	}

	private List<String> pointsEvent(PointsRules rules) {
		PointsEventStanding again = added(rules, this.said);
		return compared(again.rows(), PointsEventStanding.PointsEventRow::entry,
				(row) -> (old) -> new Standing.Row(old.waits() ? null : row.place(), row.shared() && !old.waits(),
						old.previousPlace(), row.entry(), old.team(), old.club(), 0, old.status(), List.of(), List.of(),
						old.segmentPlaces(),
						old.segmentPlaces().stream().anyMatch(Objects::nonNull) ? row.total().hundredths() : null,
						why(old, row.why(this::team)), null, old.segmentTotals()));
	}

	static PointsEventStanding added(PointsRules rules, Standing said) {
		return PointsCombination.combine(said.segments().size(), rules.disqualifiedPlaces(),
				said.rows().stream().map(TabulatedAgain::totals).toList());
	}

	private static EntryTotals totals(Standing.Row row) {
		List<@Nullable Integer> points = Objects.requireNonNull(row.segmentTotals(), row.team());
		List<EntryTotals.@Nullable SegmentTotal> totals = new ArrayList<>();
		for (int i = 0; i < points.size(); i++) {
			Integer place = row.segmentPlaces().get(i);
			Integer total = points.get(i);
			totals
				.add((place != null && total != null) ? new EntryTotals.SegmentTotal(place, new Points(total)) : null);
		}
		return new EntryTotals(row.entry(), status(row), totals);
	}

	/** Old versions have their sentences in words, and who waits has one of its own. */
	private static Sentence why(Standing.Row said, Sentence again) {
		return (said.waits() || said.why().key().isEmpty()) ? said.why() : again;
	}

	private String team(String entry) {
		return this.teams.getOrDefault(entry, entry);
	}

	private <R> List<String> compared(List<R> again, Function<R, String> entry,
			Function<R, Function<Standing.Row, Standing.Row>> row) {
		List<String> different = new ArrayList<>();
		for (int i = 0; i < Math.max(again.size(), this.said.rows().size()); i++) {
			Standing.Row old = (i < this.said.rows().size()) ? this.said.rows().get(i) : null;
			R now = (i < again.size()) ? again.get(i) : null;
			if (old == null || now == null) {
				different.add((old != null) ? old.team() : team(entry.apply(Objects.requireNonNull(now))));
			}
			else if (!entry.apply(now).equals(old.entry()) || !row.apply(now).apply(old).equals(old)) {
				different.add(old.team());
			}
		}
		return different;
	}

}
