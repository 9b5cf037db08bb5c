package rimebook.letters.web;

import java.util.Map;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.UnderWay;
import rimebook.letters.SentLetters;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.shared.Actor;

/** Letters that did not go. */
@Component
class LettersWaiting implements WaitingList {

	private final UnderWay underWay;

	private final SentLetters letters;

	LettersWaiting(UnderWay underWay, SentLetters letters) {
		this.underWay = underWay;
		this.letters = letters;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		Map<CompetitionId, Integer> troubles = this.letters.troubles();
		return this.underWay
			.competitions(CompetitionState.ENTRIES_OPEN, CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING)
			.filter((competition) -> troubles.containsKey(competition.id()))
			.map((competition) -> line(competition, troubles.getOrDefault(competition.id(), 0)));
	}

	private static Waiting line(CompetitionView competition, int letters) {
		return new Waiting(70, "letters.waiting.trouble", letters, new Waiting.Place(competition.name(), ""),
				"/desk/letters/" + competition.id())
			.only("SECRETARY");
	}

}
