package rimebook.results;

import java.util.Optional;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionMoveGuard;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;

/** A competition is final once every segment that was opened is official. */
@Component
class FinalResultGuard implements CompetitionMoveGuard {

	private final Competitions competitions;

	private final Standings standings;

	FinalResultGuard(Competitions competitions, Standings standings) {
		this.competitions = competitions;
		this.standings = standings;
	}

	@Override
	@Transactional(readOnly = true)
	public Optional<String> refusal(CompetitionView competition, CompetitionState next) {
		if (next != CompetitionState.FINAL) {
			return Optional.empty();
		}
		return this.competitions.events(competition.id())
			.stream()
			.flatMap((event) -> event.segments()
				.stream()
				.filter((segment) -> !isOfficial(segment.id()))
				.map((segment) -> event.name() + ", " + segment.name()))
			.findFirst()
			.map((name) -> "The result of " + name + " is not official yet.");
	}

	private boolean isOfficial(SegmentId segment) {
		return this.standings.result(segment)
			.filter((result) -> result.state() == SegmentResultState.OFFICIAL)
			.isPresent();
	}

}
