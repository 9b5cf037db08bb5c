package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.performances.ClosedCards;
import rimebook.published.Standing;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Figures;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentStanding;

/** Composes the standing of a segment from its closed cards; no state, no database. */
@Component
class SegmentComposer {

	/** Tabulate the closed cards. */
	Standing compose(MethodStandings.SegmentFacts facts) {
		EventView event = facts.event();
		SegmentView segment = facts.segment();
		List<ClosedCards.ClosedPerformance> closed = facts.field().closed();
		PlacementRules rules = event.rules(segment.kind());
		SegmentStanding standing = PlacementTabulation.ofCards(rules,
				closed.stream().map(SegmentComposer::cards).toList());
		StartedTeams teams = StartedTeams.of(facts);
		List<Standing.Row> rows = standing.rows()
			.stream()
			.map((row) -> row(row, figures(row, standing, rules), teams))
			.toList();
		return new Standing(facts.competition().name(), event.name(), segment.name(),
				facts.competition().facts().rulebook(), RuleSetWords.of(rules, event), rules.method().name(),
				event.judging().judges(), facts.field().started(), facts.field().starters(),
				RuleSetWords.firstMark(segment.kind()), RuleSetWords.secondMark(), List.of(), rows);
	}

	static EntryCards cards(ClosedCards.ClosedPerformance performance) {
		return new EntryCards(performance.entry().toString(), performance.status(), performance.cards());
	}

	private static Standing.Row row(PlacedEntry row, List<Standing.Figure> figures, StartedTeams teams) {
		TeamNames.Named team = teams.of(row.entry());
		return new Standing.Row(row.place(), row.shared(), teams.previousPlace(row.entry()), row.entry(), team.team(),
				team.club(), teams.number(row.entry()), row.status().name(), cards(row), figures, List.of(), null,
				row.why((entry) -> teams.of(entry).team()));
	}

	static List<Standing.Card> cards(PlacedEntry row) {
		return IntStream.range(0, row.cards().size())
			.mapToObj((i) -> new Standing.Card(row.cards().get(i).first(), row.cards().get(i).second(),
					(i < row.ordinals().size()) ? Hundredths.plain(row.ordinals().get(i)) : ""))
			.toList();
	}

	/** A place that stays empty is a figure too: the event counts it. */
	static List<Standing.Figure> figures(PlacedEntry row, SegmentStanding standing, PlacementRules rules) {
		List<Standing.Figure> figures = new ArrayList<>(figures(row.figures()));
		if (row.status() == EntryStatus.DISQUALIFIED && rules.disqualifiedPlaces() == DisqualifiedPlaces.LEAVE_GAPS) {
			standing.occupiedPlace(row.entry()).map(Standing.Figure::ofEmptyPlace).ifPresent(figures::add);
		}
		return figures;
	}

	private static List<Standing.Figure> figures(@Nullable Figures figures) {
		return (figures == null) ? List.of() : figures.measures().stream().map(SegmentComposer::figure).toList();
	}

	private static Standing.Figure figure(Figures.Measure measure) {
		return new Standing.Figure(measure.criterion().name().toLowerCase(Locale.ROOT).replace('_', '-'),
				switch (measure.criterion()) {
					case SIZE_OF_MAJORITY, JUDGES_IN_FAVOUR -> String.valueOf(measure.value());
					default -> Hundredths.plain(measure.value());
				});
	}

}
