package rimebook.results;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.published.Standing;
import rimebook.tabulation.Combination;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.EventStanding;
import rimebook.tabulation.PlacementRules;

/** Composes the standing of an event from the places of its segments. */
@Component
class EventComposer {

	/** Combine the segments by factored places. */
	Standing compose(MethodStandings.EventFacts facts) {
		EventView event = facts.event();
		MethodStandings.EventField field = facts.field();
		Standing last = facts.last();
		PlacementRules rules = event.rules(event.segments().get(0).kind());
		TeamNames.Teams teams = TeamNames.of(facts.entries());
		Map<String, Integer> previous = PreviousPlaces.of(facts.before());
		List<Standing.Row> rows = Combination
			.combine(rules(event), places(facts.segments(), field.statuses(facts.segments())))
			.rows()
			.stream()
			.map((row) -> row(row, teams, previous, field))
			.toList();
		return new Standing(facts.competition().name(), event.name(), "", facts.competition().facts().rulebook(),
				RuleSetWords.ofEvent(rules, event), rules.method().name(), event.judging().judges(), last.skated(),
				last.starters(), "", "", columns(event), rows);
	}

	/** How the places of the event's segments are put together. */
	static CombinationRules rules(EventView event) {
		return CombinationRules.ofFactors(event.segments().stream().map((segment) -> segment.factor()).toList())
			.withDisqualifiedPlaces(event.judging().policies().disqualifiedPlaces());
	}

	static List<Standing.SegmentColumn> columns(EventView event) {
		return event.segments()
			.stream()
			.map((segment) -> new Standing.SegmentColumn(segment.name(), segment.factor()))
			.toList();
	}

	/**
	 * The places in each segment.
	 * @param statuses how every team came through the event
	 */
	static List<EntryPlaces> places(List<@Nullable Standing> segments, Map<String, EntryStatus> statuses) {
		Map<String, List<@Nullable Integer>> places = new LinkedHashMap<>();
		for (int i = 0; i < segments.size(); i++) {
			Standing standing = segments.get(i);
			if (standing != null) {
				for (Standing.Row row : standing.rows()) {
					places.computeIfAbsent(row.entry(), (entry) -> none(segments.size())).set(i, row.placeTaken());
				}
			}
		}
		return places.entrySet()
			.stream()
			.map((entry) -> new EntryPlaces(entry.getKey(), Objects.requireNonNull(statuses.get(entry.getKey())),
					entry.getValue()))
			.toList();
	}

	static List<@Nullable Integer> none(int segments) {
		List<@Nullable Integer> places = new ArrayList<>();
		for (int i = 0; i < segments; i++) {
			places.add(null);
		}
		return places;
	}

	private static Standing.Row row(EventStanding.EventRow row, TeamNames.Teams teams, Map<String, Integer> previous,
			MethodStandings.EventField field) {
		TeamNames.Named team = teams.of(row.entry());
		boolean waits = field.waits(row.entry(), row.status());
		return new Standing.Row(waits ? null : row.place(), row.shared() && !waits, previous.get(row.entry()),
				row.entry(), team.team(), team.club(), 0, field.words(row.entry(), row.status()), List.of(), List.of(),
				row.places(), row.total(),
				field.why(row.entry(), row.status(), row.why((entry) -> teams.of(entry).team())));
	}

}
