package rimebook.tablets;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.panels.SeatId;
import rimebook.performances.CardBook;
import rimebook.performances.CardBooks;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;

/** What officials changed in a seat's closed cards of an event. */
@Component
class CorrectedCards {

	private final CardBooks books;

	private final PerformanceRegister performances;

	private final Competitions competitions;

	CorrectedCards(CardBooks books, PerformanceRegister performances, Competitions competitions) {
		this.books = books;
		this.performances = performances;
		this.competitions = competitions;
	}

	List<JudgeTable.Corrected> of(SeatId seat, EventView event) {
		return this.books.of(event).corrected(seat).stream().map(this::corrected).toList();
	}

	private JudgeTable.Corrected corrected(CardBook.CorrectedCard card) {
		PerformanceView performance = this.performances.find(card.performance());
		SegmentView segment = this.competitions.eventOf(performance.segment()).segment(performance.segment());
		return new JudgeTable.Corrected(card.id(), performance.startNumber(), segment.name(), card.before(),
				card.after());
	}

}
