package rimebook.results;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.performances.ClosedCards;
import rimebook.performances.ClosedMarks;
import rimebook.published.Standing;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.EntryTotals;
import rimebook.tabulation.points.Performance;
import rimebook.tabulation.points.PerformanceScore;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsCombination;
import rimebook.tabulation.points.PointsEventStanding;
import rimebook.tabulation.points.PointsNeeded;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.PointsTabulation;
import rimebook.tabulation.points.SegmentRules;
import rimebook.wording.Sentence;

/** Composes the standings of events judged by points; no state, no database. */
@Component
class PointsStandings implements MethodStandings {

	private final RuleSets ruleSets;

	PointsStandings(RuleSets ruleSets) {
		this.ruleSets = ruleSets;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPoints();
	}

	@Override
	public Sentence ruleSet(EventView event) {
		return PointsWording.ofEvent(this.ruleSets.of(event), event);
	}

	@Override
	public Standing ofSegment(SegmentFacts facts) {
		EventView event = facts.event();
		SegmentView segment = facts.segment();
		PointsRules rules = this.ruleSets.of(event);
		StartedTeams teams = StartedTeams.of(facts);
		List<Standing.Row> rows = tabulated(event, segment, facts.field().closed()).rows()
			.stream()
			.map((row) -> row(row, rules, teams))
			.toList();
		return new Standing(facts.competition().name(), event.name(), segment.name(),
				facts.competition().facts().rulebook(), PointsWording.ofSegment(rules, event, segment),
				event.judging().method().name(), event.judging().judges(), facts.field().started(),
				facts.field().starters(), "", "", List.of(), rows);
	}

	@Override
	public Standing.Outlook outlook(SegmentFacts facts, List<EntryId> waiting, EventFacts whole) {
		return waiting.isEmpty() ? Standing.Outlook.NONE
				: new Standing.Outlook(List.of(), scoresNeeded(facts, waiting.get(0).toString(), whole), List.of());
	}

	private List<Sentence> scoresNeeded(SegmentFacts facts, String next, EventFacts whole) {
		EventView event = facts.event();
		boolean last = event.isLastSegment(facts.segment().id()) && facts.segment().position() > 1;
		List<PointsNeeded.ScoreNeeded> needed = last ? neededInEvent(event, whole, next)
				: PointsNeeded.inSegment(tabulated(event, facts.segment(), facts.field().closed()));
		String team = TeamNames.of(facts.entries()).of(next).team();
		return needed.stream()
			.limit(LookAhead.PLACES)
			.map((one) -> Sentence.of("score.needed.by", team,
					one.words(last ? PointsNeeded.ScoreNeeded.Where.EVENT : PointsNeeded.ScoreNeeded.Where.SEGMENT)))
			.toList();
	}

	/**
	 * What each place of the event takes for a team that has its last segment before it.
	 */
	private List<PointsNeeded.ScoreNeeded> neededInEvent(EventView event, EventFacts whole, String entry) {
		PointsEventStanding standing = combined(this.ruleSets.of(event), whole.segments(), whole.field());
		boolean comes = standing.row(entry)
			.filter((row) -> row.place() != null)
			.filter((row) -> row.segments().stream().filter(Objects::isNull).count() == 1)
			.isPresent();
		return comes ? PointsNeeded.inEvent(standing, entry) : List.of();
	}

	private PointsStanding tabulated(EventView event, SegmentView segment, List<ClosedCards.ClosedPerformance> closed) {
		return PointsTabulation.standing(this.ruleSets.of(event, segment),
				closed.stream().map(PointsStandings::performance).toList());
	}

	private static PointsEventStanding combined(PointsRules rules, List<@Nullable Standing> segments,
			MethodStandings.EventField field) {
		return PointsCombination.combine(segments.size(), rules.disqualifiedPlaces(),
				totals(segments, field.statuses(segments)));
	}

	private static Performance performance(ClosedCards.ClosedPerformance closed) {
		ClosedMarks.PointsSheet sheet = closed.sheet();
		String entry = closed.entry().toString();
		return (sheet == null) ? Performance.without(entry, closed.status())
				: new Performance(entry, closed.status(), sheet.elements(), sheet.components(), sheet.deductions());
	}

	private static Standing.Row row(PointsStanding.ScoredEntry row, PointsRules rules, StartedTeams teams) {
		TeamNames.Named team = teams.of(row.entry());
		PerformanceScore score = row.score();
		return new Standing.Row(row.place(), row.shared(), teams.previousPlace(row.entry()), row.entry(), team.team(),
				team.club(), teams.number(row.entry()), row.status().name(), List.of(), List.of(), List.of(),
				(score != null) ? score.total().hundredths() : null, row.why((entry) -> teams.of(entry).team()),
				(score != null) ? new Scores(rules).of(score) : null, null);
	}

	@Override
	public Standing ofEvent(EventFacts facts) {
		EventView event = facts.event();
		MethodStandings.EventField field = facts.field();
		Standing last = facts.last();
		PointsRules rules = this.ruleSets.of(event);
		TeamNames.Teams teams = TeamNames.of(facts.entries());
		Map<String, Integer> previous = PreviousPlaces.of(facts.before());
		List<Standing.Row> rows = combined(rules, facts.segments(), field).rows()
			.stream()
			.map((row) -> row(row, teams, previous.get(row.entry()), field))
			.toList();
		return new Standing(facts.competition().name(), event.name(), "", facts.competition().facts().rulebook(),
				PointsWording.ofEvent(rules, event), event.judging().method().name(), event.judging().judges(),
				last.skated(), last.starters(), "", "", EventComposer.columns(event), rows);
	}

	private static List<EntryTotals> totals(List<@Nullable Standing> segments, Map<String, EntryStatus> statuses) {
		Map<String, List<EntryTotals.@Nullable SegmentTotal>> totals = new LinkedHashMap<>();
		for (int i = 0; i < segments.size(); i++) {
			Standing standing = segments.get(i);
			if (standing != null) {
				for (Standing.Row row : standing.rows()) {
					totals.computeIfAbsent(row.entry(), (entry) -> none(segments.size())).set(i, total(row));
				}
			}
		}
		return totals.entrySet()
			.stream()
			.map((entry) -> new EntryTotals(entry.getKey(), Objects.requireNonNull(statuses.get(entry.getKey())),
					entry.getValue()))
			.toList();
	}

	private static EntryTotals.@Nullable SegmentTotal total(Standing.Row row) {
		Integer place = row.place();
		Integer total = row.total();
		return (place != null && total != null) ? new EntryTotals.SegmentTotal(place, new Points(total)) : null;
	}

	private static List<EntryTotals.@Nullable SegmentTotal> none(int segments) {
		List<EntryTotals.@Nullable SegmentTotal> totals = new ArrayList<>();
		for (int i = 0; i < segments; i++) {
			totals.add(null);
		}
		return totals;
	}

	private static Standing.Row row(PointsEventStanding.PointsEventRow row, TeamNames.Teams teams,
			@Nullable Integer previous, MethodStandings.EventField field) {
		TeamNames.Named team = teams.of(row.entry());
		List<@Nullable Integer> places = new ArrayList<>();
		List<@Nullable Integer> totals = new ArrayList<>();
		for (EntryTotals.SegmentTotal segment : row.segments()) {
			places.add((segment != null) ? segment.place() : null);
			totals.add((segment != null) ? segment.total().hundredths() : null);
		}
		boolean started = totals.stream().anyMatch((total) -> total != null);
		boolean waits = field.waits(row.entry(), row.status());
		return new Standing.Row(waits ? null : row.place(), row.shared() && !waits, previous, row.entry(), team.team(),
				team.club(), 0, field.words(row.entry(), row.status()), List.of(), List.of(), places,
				started ? row.total().hundredths() : null,
				field.why(row.entry(), row.status(), row.why((entry) -> teams.of(entry).team())), null, totals);
	}

	/** Names the rule set of points judging on every sheet. */
	final class PointsWording {

		private PointsWording() {
		}

		static Sentence ofSegment(PointsRules rules, EventView event, SegmentView segment) {
			return Sentence.of("rules.points.segment", ruleSet(rules, event), tieBreak(
					rules.tieBreaks().getOrDefault(segment.kind(), SegmentRules.TieBreak.NONE), segment.kind()));
		}

		static Sentence ofEvent(PointsRules rules, EventView event) {
			return Sentence.of("rules.points.event", ruleSet(rules, event));
		}

		private static Sentence ruleSet(PointsRules rules, EventView event) {
			String level = (event.judging().points() != null) ? event.judging().points().level() : "";
			return Sentence.of(
					(event.judging().judges() >= rules.trimFrom()) ? "rules.points.trimmed" : "rules.points.all-marks",
					event.judging().judges(), rules.title(), level);
		}

		private static Sentence tieBreak(SegmentRules.TieBreak tieBreak, SegmentKind kind) {
			String segment = (kind == SegmentKind.SHORT) ? ".short" : ".free";
			return Sentence.of(switch (tieBreak) {
				case ELEMENTS -> "rules.points.elements" + segment;
				case COMPONENTS -> "rules.points.components" + segment;
				case NONE -> "rules.points.shared";
			});
		}

	}

}
