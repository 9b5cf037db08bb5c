package rimebook.competition.web;

import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.UnderWay;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.shared.Actor;

/** The competitions that wait for their next step. */
@Component
class CompetitionsWaiting implements WaitingList {

	private final UnderWay underWay;

	CompetitionsWaiting(UnderWay underWay) {
		this.underWay = underWay;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return Stream
			.of(step(CompetitionState.PLANNED, "competition.waiting.plan"),
					step(CompetitionState.ENTRIES_CLOSED, "competition.waiting.start"),
					step(CompetitionState.FINAL, "competition.waiting.archive"))
			.flatMap((lines) -> lines);
	}

	private Stream<Waiting> step(CompetitionState state, String key) {
		return this.underWay.competitions(state).map((competition) -> line(competition, key));
	}

	private static Waiting line(CompetitionView competition, String key) {
		return new Waiting(70, key, 0, new Waiting.Place(competition.name(), ""),
				"/desk/competitions/" + competition.id());
	}

}
