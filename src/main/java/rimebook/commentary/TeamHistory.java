package rimebook.commentary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.live.ToldSegment;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.wording.Sentence;

/** What published standings say of a team from before the segment that is skated. */
@Component
class TeamHistory {

	/** More cannot be told while a team takes its starting position. */
	private static final int MOST = 5;

	private final Standings standings;

	private final Entries entries;

	private final Competitions competitions;

	TeamHistory(Standings standings, Entries entries, Competitions competitions) {
		this.standings = standings;
		this.entries = entries;
		this.competitions = competitions;
	}

	/** What a team did in the segments before this one, and where that put it. */
	List<Sentence> before(ToldSegment told, EntryId entry) {
		List<SegmentView> earlier = told.event().previousSegments(told.segment().id());
		List<Sentence> said = new ArrayList<>();
		for (SegmentView segment : earlier) {
			this.standings.latest(segment.id())
				.flatMap((version) -> inSegment(segment.name(), version, entry))
				.ifPresent(said::add);
		}
		ResultVersion whole = told.whole();
		if (!earlier.isEmpty() && whole != null) {
			placed(whole, entry).map((row) -> Sentence.of("commentary.so-far", place(row), total(row, whole)))
				.ifPresent(said::add);
		}
		return said;
	}

	private static Optional<Sentence> inSegment(String name, ResultVersion version, EntryId entry) {
		Standing.Row row = PublishedTable.row(version, entry.toString());
		if (row == null) {
			return Optional.empty();
		}
		String status = PublishedTable.status(row);
		if (row.place() == null) {
			return status.isEmpty() || row.waits() ? Optional.empty()
					: Optional.of(Sentence.of("commentary.before." + status, name));
		}
		return Optional.of(Sentence.of("commentary.before.placed", name, place(row), version.standing().starters(),
				total(row, version)));
	}

	/** Its own results in other events that are over or under way, the newest first. */
	List<Sentence> earlier(EntryView entry) {
		return this.entries.ofTeam(entry.team().id())
			.stream()
			.filter((other) -> !other.id().equals(entry.id()))
			.flatMap((other) -> result(other).stream())
			.sorted(Comparator.comparing(Earlier::competition,
					Comparator.comparing((CompetitionView view) -> view.facts().firstDay()).reversed()))
			.limit(MOST)
			.map(Earlier::said)
			.toList();
	}

	private Optional<Earlier> result(EntryView entry) {
		EventView event = this.competitions.event(entry.event());
		CompetitionView competition = this.competitions.competition(event.competition());
		if (competition.state() == CompetitionState.PLANNED || event.isCancelled()) {
			return Optional.empty();
		}
		return this.standings.latest(event.id())
			.flatMap((version) -> placed(version, entry.id()).map((row) -> said(competition, event, version, row)));
	}

	private static Earlier said(CompetitionView competition, EventView event, ResultVersion version, Standing.Row row) {
		boolean official = version.state() == ResultVersion.ResultState.OFFICIAL;
		int teams = (int) Stream.of(version.standing().rows())
			.flatMap(List::stream)
			.filter((one) -> one.place() != null)
			.count();
		return new Earlier(competition,
				Sentence.of(official ? "commentary.earlier" : "commentary.earlier.provisional", competition.name(),
						String.valueOf(competition.facts().firstDay().getYear()), event.name(), place(row), teams));
	}

	private static Optional<Standing.Row> placed(ResultVersion version, EntryId entry) {
		return Optional.ofNullable(PublishedTable.row(version, entry.toString())).filter((row) -> row.place() != null);
	}

	private static int place(Standing.Row row) {
		Integer place = row.place();
		return (place != null) ? place : 0;
	}

	private static Sentence total(Standing.Row row, ResultVersion version) {
		Integer total = row.total();
		return (total != null && version.standing().isByPoints())
				? Sentence.of("commentary.with-points", Sentence.of("figure.points", total)) : Sentence.NONE;
	}

	private record Earlier(CompetitionView competition, Sentence said) {
	}

}
