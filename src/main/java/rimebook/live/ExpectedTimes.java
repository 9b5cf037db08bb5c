package rimebook.live;

import java.util.Map;
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
