package rimebook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

import rimebook.competition.EventId;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatTakeoverQuestions;
import rimebook.panels.SeatView;

/** The seats that visitors and simulated tablets share, as the referee gives them. */
class SharedSeats {

	/** A tablet looks every few seconds; one that was quiet for so long has gone. */
	private static final Duration ALIVE = Duration.ofMinutes(1);

	private final Panels panels;

	private final SeatTakeoverQuestions questions;

	private final KnownCodes codes;

	private final PanelCast cast;

	private final Clock clock;

	SharedSeats(Panels panels, SeatTakeoverQuestions questions, KnownCodes codes, PanelCast cast, Clock clock) {
		this.panels = panels;
		this.questions = questions;
		this.codes = codes;
		this.cast = cast;
		this.clock = clock;
	}

	/** The seats of an event whose cards are taken. */
	List<SeatView> withCard(EventId event) {
		return this.panels.withCard(event);
	}

	/** The judges' seats of an event. */
	List<SeatView> judges(EventId event) {
		return this.panels.judges(event);
	}

	/** Let every visitor who asks for a seat have it. */
	void give(EventId event) {
		this.questions.ofEvent(event)
			.forEach((one) -> this.questions.answer(one.seat(), one.askedAt(), true, this.cast.referee()));
	}

	/**
	 * What a tablet joins a seat with; empty without a code, and while a tablet that is
	 * alive has the seat, since joining would shut that one out.
	 */
	Optional<String> codeIfFree(SeatId id) {
		SeatView seat = this.panels.seat(id);
		return (seat.hasCode() && !isHeld(seat)) ? Optional.of(this.codes.orNew(seat)) : Optional.empty();
	}

	private boolean isHeld(SeatView seat) {
		Instant heard = seat.tablet().lastHeardAt();
		return seat.tablet().pairedAt() != null && heard != null && heard.isAfter(this.clock.instant().minus(ALIVE));
	}

}
