package rimebook.rulings.web;

import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.UnderWay;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.shared.Actor;

/** The questions that wait for the referee's ruling. */
@Component
class QuestionsWaiting implements WaitingList {

	private final UnderWay underWay;

	private final Rulings rulings;

	QuestionsWaiting(UnderWay underWay, Rulings rulings) {
		this.underWay = underWay;
		this.rulings = rulings;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return this.underWay
			.competitions(CompetitionState.ENTRIES_OPEN, CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING)
			.map(this::line)
			.filter((line) -> line.count() > 0);
	}

	private Waiting line(CompetitionView competition) {
		int open = (int) this.rulings.ofCompetition(competition.id()).stream().filter(QuestionView::isOpen).count();
		return new Waiting(50, "rulings.waiting.open", open, new Waiting.Place(competition.name(), ""),
				"/desk/rulings?state=open&competition=" + competition.id())
			.only("REFEREE");
	}

}
