package rimebook.results;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;

/** Lists the segments that have, or will soon have, a result. */
@Service
@Transactional(readOnly = true)
public class SegmentOverview {

	private final Competitions competitions;

	private final Standings standings;

	SegmentOverview(Competitions competitions, Standings standings) {
		this.competitions = competitions;
		this.standings = standings;
	}

	/** List every segment of the competitions that run or are final, in their order. */
	public List<Line> segments() {
		return this.competitions.all()
			.stream()
			.filter((competition) -> competition.state().compareTo(CompetitionState.RUNNING) >= 0)
			.flatMap((competition) -> this.competitions.events(competition.id())
				.stream()
				.flatMap((event) -> event.segments().stream().map((segment) -> line(competition, event, segment))))
			.toList();
	}

	private Line line(CompetitionView competition, EventView event, SegmentView segment) {
		return new Line(competition, event, segment, this.standings.result(segment.id()).orElse(null));
	}

	/**
	 * A segment with where its result stands.
	 *
	 * @param result {@code null} before the segment was opened
	 */
	public record Line(CompetitionView competition, EventView event, SegmentView segment,
			@Nullable SegmentResultView result) {
	}

}
