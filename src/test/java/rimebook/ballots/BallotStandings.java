package rimebook.ballots;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.performances.ClosedCards;
import rimebook.published.Standing;
import rimebook.results.MethodStandings;
import rimebook.tabulation.EntryStatus;
import rimebook.wording.Sentence;

/** The most ballots win; in the event the sum of both segments. */
class BallotStandings implements MethodStandings {

	private final Entries entries;

	BallotStandings(Entries entries) {
		this.entries = entries;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().equals(Ballots.METHOD);
	}

	@Override
	public Sentence ruleSet(EventView event) {
		return Sentence.of("ballots.rules");
	}

	@Override
	public Standing ofSegment(SegmentFacts facts) {
		List<Line> lines = facts.field().closed().stream().map(BallotStandings::line).toList();
		return standing(facts.event(), facts.segment().name(), facts.competition().name(),
				facts.competition().facts().rulebook(), facts.field().started(), facts.field().starters(), List.of(),
				rows(lines, previous(facts.before())));
	}

	private static Line line(ClosedCards.ClosedPerformance performance) {
		return new Line(performance.entry().toString(), performance.startNumber(), performance.status().name(),
				(performance.status() == EntryStatus.SKATED && performance.marks() instanceof Ballots.Sum sum)
						? sum.value() : null,
				List.of());
	}

	@Override
	public Standing ofEvent(EventFacts facts) {
		Map<String, EntryStatus> statuses = facts.field().statuses(facts.segments());
		Map<String, List<@Nullable Integer>> places = new LinkedHashMap<>();
		Map<String, Integer> sums = new HashMap<>();
		for (int i = 0; i < facts.segments().size(); i++) {
			Standing segment = facts.segments().get(i);
			for (Standing.Row row : (segment != null) ? segment.rows() : List.<Standing.Row>of()) {
				places.computeIfAbsent(row.entry(), (entry) -> new ArrayList<>(none(facts.segments())))
					.set(i, row.place());
				sums.merge(row.entry(), Objects.requireNonNullElse(row.total(), 0), Integer::sum);
			}
		}
		List<Line> lines = places.keySet()
			.stream()
			.map((entry) -> new Line(entry, 0, facts.field().words(entry, statuses.get(entry)),
					facts.field().waits(entry, statuses.get(entry)) || statuses.get(entry) != EntryStatus.SKATED ? null
							: sums.get(entry),
					places.get(entry)))
			.toList();
		return standing(facts.event(), "", facts.competition().name(), facts.competition().facts().rulebook(),
				facts.last().skated(), facts.last().starters(),
				facts.event()
					.segments()
					.stream()
					.map((segment) -> new Standing.SegmentColumn(segment.name(), segment.factor()))
					.toList(),
				rows(lines, previous(facts.before())));
	}

	private static List<@Nullable Integer> none(Collection<?> segments) {
		List<@Nullable Integer> none = new ArrayList<>();
		segments.forEach((segment) -> none.add(null));
		return none;
	}

	private static Standing standing(EventView event, String segment, String competition, String rulebook, int skated,
			int starters, List<Standing.SegmentColumn> columns, List<Standing.Row> rows) {
		return new Standing(competition, event.name(), segment, rulebook, Sentence.of("ballots.rules"),
				event.judging().method().name(), event.judging().judges(), skated, starters, "", "", columns, rows);
	}

	private List<Standing.Row> rows(List<Line> lines, Map<String, Integer> previous) {
		return lines.stream()
			.sorted(Comparator.comparing((Line line) -> Objects.requireNonNullElse(line.sum(), -1)).reversed())
			.map((line) -> row(line, lines, previous.get(line.entry())))
			.toList();
	}

	private Standing.Row row(Line line, List<Line> all, @Nullable Integer previous) {
		EntryView entry = this.entries.entry(EntryId.of(line.entry()));
		Integer sum = line.sum();
		List<Integer> others = all.stream().map(Line::sum).filter(Objects::nonNull).toList();
		Integer place = (sum != null) ? 1 + (int) others.stream().filter((other) -> other > sum).count() : null;
		boolean shared = sum != null && others.stream().filter(sum::equals).count() > 1;
		return new Standing.Row(place, shared, previous, line.entry(), entry.team().name(), entry.team().club().name(),
				line.number(), line.status(), List.of(), List.of(), line.places(), sum,
				(sum != null) ? Sentence.of("ballots.why", sum) : Sentence.of("ballots.no-place"));
	}

	private static Map<String, Integer> previous(@Nullable Standing before) {
		Map<String, Integer> places = new HashMap<>();
		if (before != null) {
			before.rows().forEach((row) -> places.put(row.entry(), row.place()));
		}
		return places;
	}

	private record Line(String entry, int number, String status, @Nullable Integer sum,
			List<@Nullable Integer> places) {
	}

}
