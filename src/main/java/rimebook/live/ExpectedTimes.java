package rimebook.live;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.SegmentView;
import rimebook.timetable.TimetableDay;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.plan.Estimate;

/** When the teams of a segment are expected today, for pages that show its order. */
@Component
class ExpectedTimes {

	private final TimetableVersions versions;

	private final TimetableDay today;

	ExpectedTimes(TimetableVersions versions, TimetableDay today) {
		this.versions = versions;
		this.today = today;
	}

	/**
	 * When the published timetable has the teams of a segment, by the identity of the
	 * entry; empty where none is published.
	 */
	Map<String, Instant> planned(CompetitionView competition, SegmentView segment) {
		return this.versions.latest(competition.id())
			.map((version) -> version.timetable().teamTimes(segment.id().value()))
			.orElseGet(Map::of)
			.entrySet()
			.stream()
			.collect(Collectors.toMap((one) -> one.getKey().toString(), Map.Entry::getValue));
	}

	/** Every time that a team has in it, with what is expected now. */
	List<TimetablePage.TeamTime> ofTeam(CompetitionView competition, UUID entry) {
		return this.versions.latest(competition.id())
			.map((version) -> TimetablePage.timesOf(this.today.now(version), entry))
			.orElseGet(List::of);
	}

	/**
	 * By the identity of the entry; empty where no timetable is published, or the segment
	 * is not on today.
	 */
	Map<String, Estimate.Expected> of(CompetitionView competition, SegmentView segment) {
		return this.versions.latest(competition.id())
			.map((version) -> this.today.now(version)
				.of(segment.id().value())
				.stream()
				.collect(Collectors.toMap((one) -> String.valueOf(one.entry()), (one) -> one, (one, other) -> one)))
			.orElseGet(Map::of);
	}

}
