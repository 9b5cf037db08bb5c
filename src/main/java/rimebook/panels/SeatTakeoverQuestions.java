package rimebook.panels;

import java.time.Instant;
import java.util.List;

import org.springframework.stereotype.Service;

import rimebook.accounts.SeatTakeovers;
import rimebook.competition.EventId;
import rimebook.shared.Actor;

/** The tablets that ask the referee for a seat whose own tablet is alive. */
@Service
public class SeatTakeoverQuestions {

	private final SeatTakeovers takeovers;

	private final Panels panels;

	SeatTakeoverQuestions(SeatTakeovers takeovers, Panels panels) {
		this.takeovers = takeovers;
		this.panels = panels;
	}

	/** Those about the seats of an event, the oldest first. */
	public List<Question> ofEvent(EventId event) {
		List<SeatTakeovers.Question> open = this.takeovers.open();
		return open.isEmpty() ? List.of()
				: this.panels.withCard(event).stream().flatMap((seat) -> about(seat, open).stream()).toList();
	}

	private static List<Question> about(SeatView seat, List<SeatTakeovers.Question> open) {
		return open.stream()
			.filter((question) -> question.seat().equals(seat.id().value()))
			.map((question) -> new Question(seat.id(), seat.place(), question.device(), question.askedAt(),
					question.holder()))
			.toList();
	}

	/**
	 * Answer one.
	 * @param askedAt the moment that names the question
	 * @param yes whether the asking tablet gets the seat
	 * @throws rimebook.shared.ConflictException {@code seat-question-gone} if it no
	 * longer asks
	 */
	public void answer(SeatId seat, Instant askedAt, boolean yes, Actor actor) {
		this.takeovers.answer(seat.value(), askedAt, yes, actor);
	}

	/**
	 * A tablet that asks for a seat whose own tablet is alive.
	 *
	 * @param device its address and browser
	 * @param askedAt when it asked, UTC; names the question
	 * @param holder the address and browser of the tablet that has the seat
	 */
	public record Question(SeatId seat, SeatPlace place, String device, Instant askedAt, String holder) {
	}

}
