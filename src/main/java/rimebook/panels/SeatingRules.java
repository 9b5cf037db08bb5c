package rimebook.panels;

import java.util.List;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** When the panel may change and who cannot sit where. */
@Component
class SeatingRules {

	private final ObjectProvider<Panels.Guard> guards;

	SeatingRules(ObjectProvider<Panels.Guard> guards) {
		this.guards = guards;
	}

	/** Only judges are guarded: an announcer may change in the middle of a segment. */
	void checkGuards(EventId event, SeatKind kind) {
		if (kind == SeatKind.JUDGE) {
			askGuards(event);
		}
	}

	/** The cards of a substitute are one person's, as a judge's are. */
	void checkLeaving(EventId event, SeatKind kind) {
		if (kind.hasCard()) {
			askGuards(event);
		}
	}

	private void askGuards(EventId event) {
		this.guards.orderedStream()
			.flatMap((guard) -> guard.refusal(event).stream())
			.findFirst()
			.ifPresent((refusal) -> {
				throw new ConflictException("panel-in-use", refusal);
			});
	}

	void checkPlace(EventView event, SeatPlace place) {
		if (!SeatPlace.of(event).contains(place)) {
			throw new RuleViolationException("seat-unknown", "number",
					Sentence.of("panels.seat-not-of-panel", event.name(), place.spoken(), event.judging().judges()));
		}
	}

	/** One person, one seat of those that exclude each other. */
	void checkOtherSeats(List<Seat> seats, SeatPlace place, Official official) {
		seats.stream()
			.filter((seat) -> seat.isTakenBy(official.id()) && seat.place().kind().excludes(place.kind()))
			.filter((seat) -> !seat.isAt(place))
			.findFirst()
			.ifPresent((seat) -> {
				throw new RuleViolationException("official-seated", "official",
						Sentence.of("panels.official-seated", official.view().name(), seat.spoken()));
			});
	}

}
