package rimebook.testsupport;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.springframework.context.ApplicationContext;

import rimebook.competition.SegmentView;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What has to hold of the entries, performances and published results of an event after
 * every act, whatever happened: none says of a team what another denies.
 */
public final class Agreement {

	private static final Set<String> WITHOUT = Set.of("WITHDRAWN", "NOT_FINISHED", "DISQUALIFIED");

	private final SmallCompetition day;

	private final Standings standings;

	private final Map<SegmentView, List<PerformanceView>> performances;

	private final Map<String, EntryView> entries;

	private Agreement(ApplicationContext context, SmallCompetition day) {
		this.day = day;
		this.standings = context.getBean(Standings.class);
		this.performances = day.event()
			.segments()
			.stream()
			.collect(Collectors.toMap(Function.identity(),
					(segment) -> context.getBean(SegmentRun.class).performances(segment.id())));
		this.entries = day.entries()
			.stream()
			.collect(Collectors.toMap((entry) -> entry.id().toString(), Function.identity()));
	}

	/** Check it all. */
	public static void check(ApplicationContext context, SmallCompetition day, String after) {
		Agreement agreement = new Agreement(context, day);
		agreement.entriesAndPerformances(after);
		agreement.segments(after);
		agreement.event(after);
	}

	private void entriesAndPerformances(String after) {
		this.performances.values().forEach((all) -> all.forEach((performance) -> {
			if (!entry(performance).isEntered()) {
				assertThat(performance.status().isDone()).as("%s: withdrawn, so nothing is awaited", after).isTrue();
			}
		}));
	}

	private void segments(String after) {
		this.performances.forEach((segment, all) -> this.standings.latest(segment.id())
			.map(ResultVersion::standing)
			.ifPresent((standing) -> segment(standing, all, after)));
	}

	/** Also a team that has left keeps its place in what it skated. */
	private static void segment(Standing standing, List<PerformanceView> all, String after) {
		Map<String, PerformanceView> done = all.stream()
			.filter((performance) -> performance.status().isDone()
					|| performance.status() == PerformanceStatus.REOPENED)
			.collect(Collectors.toMap((performance) -> performance.entry().toString(), Function.identity()));
		assertThat(standing.rows()).as(after).extracting(Standing.Row::entry).containsAll(done.keySet());
		standing.rows().forEach((row) -> {
			PerformanceView performance = done.get(row.entry());
			assertThat(performance).as("%s: %s is in the standing", after, row.team()).isNotNull();
			boolean skated = !performance.status().isEndedWithoutMarks();
			assertThat(row.place() != null).as("%s: %s has a place", after, row.team()).isEqualTo(skated);
			assertThat(row.status()).as(after).isEqualTo(skated ? "SKATED" : performance.status().name());
		});
	}

	private void event(String after) {
		this.standings.latest(this.day.event().id())
			.map(ResultVersion::standing)
			.ifPresent((standing) -> standing.rows().forEach((row) -> row(row, after)));
	}

	private void row(Standing.Row row, String after) {
		List<PerformanceStatus> own = this.performances.values()
			.stream()
			.flatMap(List::stream)
			.filter((performance) -> performance.entry().toString().equals(row.entry()))
			.map(PerformanceView::status)
			.toList();
		boolean out = !this.entries.get(row.entry()).isEntered()
				|| own.stream().anyMatch(PerformanceStatus::isEndedWithoutMarks);
		assertThat(WITHOUT.contains(row.status())).as("%s: %s in the event is %s", after, row.team(), row.status())
			.isEqualTo(out);
		assertThat(row.place() == null).as("%s: %s has no place in the event", after, row.team())
			.isEqualTo(out || row.status().equals("WAITING"));
		if (row.status().equals("WAITING")) {
			assertThat(own).as("%s: %s is still to skate", after, row.team()).anyMatch((status) -> !status.isDone());
		}
	}

	private EntryView entry(PerformanceView performance) {
		return this.entries.get(performance.entry().toString());
	}

}
