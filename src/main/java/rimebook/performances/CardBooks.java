package rimebook.performances;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;

/** Finds the cards of a segment by the way in which its event is judged. */
@Component
public class CardBooks {

	private final Competitions competitions;

	private final List<CardBook> books;

	CardBooks(Competitions competitions, List<CardBook> books) {
		this.competitions = competitions;
		this.books = books;
	}

	/** The cards of a segment. */
	public CardBook of(SegmentId segment) {
		return of(this.competitions.eventOf(segment));
	}

	/** The same for whoever has read the event already. */
	public CardBook of(EventView event) {
		return this.books.stream().filter((book) -> book.isFor(event)).findFirst().orElseThrow();
	}

}
