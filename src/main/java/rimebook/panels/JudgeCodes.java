package rimebook.panels;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.accounts.SeatCodes;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** The codes with which tablets join as a judge. */
@Component
class JudgeCodes {

	private final SeatCodes codes;

	JudgeCodes(SeatCodes codes) {
		this.codes = codes;
	}

	/** Issue a code; an earlier one and the tablet that joined with it are void. */
	void issue(Seat seat, EventView event, Actor actor) {
		if (!seat.place().kind().hasCard()) {
			throw new RuleViolationException("seat-without-card",
					Sentence.of("panels.seat-without-card", seat.spoken()));
		}
		this.codes.issue(seat.id().value(), seat.label() + ", " + event.name(), actor);
	}

	void issueMissing(List<Seat> judges, EventView event, Actor actor) {
		judges.stream()
			.filter((seat) -> !this.codes.hasCode(seat.id().value()))
			.forEach((seat) -> issue(seat, event, actor));
	}

	/** Void the code that the person who leaves has on paper, if there is one. */
	void replace(Seat seat, EventView event, Actor actor) {
		if (this.codes.hasCode(seat.id().value())) {
			issue(seat, event, actor);
		}
	}

}
