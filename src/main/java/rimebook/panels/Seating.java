package rimebook.panels;

import java.util.List;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.StillOpen;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Gives seats and takes them back. Every change first takes hold of the competition, so
 * that two people cannot seat one official twice at the same moment.
 */
@Component
class Seating {

	private final SeatRepository seats;

	private final Competitions competitions;

	private final SeatingRules rules;

	private final ConflictCheck conflicts;

	private final StillOpen stillOpen;

	private final Acts acts;

	Seating(SeatRepository seats, Competitions competitions, SeatingRules rules, ConflictCheck conflicts, Acts acts,
			StillOpen stillOpen) {
		this.acts = acts;
		this.stillOpen = stillOpen;
		this.seats = seats;
		this.competitions = competitions;
		this.rules = rules;
		this.conflicts = conflicts;
	}

	/**
	 * Take hold of the event's competition, or refuse once nothing of the event may
	 * change.
	 */
	EventView hold(EventId event) {
		this.competitions.holding(event);
		this.stillOpen.require(event);
		return this.competitions.event(event);
	}

	/** As {@link #hold(EventId)} for the event of a seat, which is read only after it. */
	EventView hold(SeatId id) {
		return hold(this.seats.eventOf(id.value()).map(EventId::new).orElseThrow(() -> unknown(id)));
	}

	Seat take(EventView event, Panels.SeatOfficial seating, Official official, Actor actor) {
		SeatPlace place = new SeatPlace(seating.kind(), seating.number());
		this.rules.checkPlace(event, place);
		this.rules.checkGuards(event.id(), place.kind());
		this.rules.checkOtherSeats(this.seats.findByEventId(event.id().value()), place, official);
		Seat.Allowance allowance = this.conflicts.allowanceFor(seating, official.view());
		Seat seat = at(event.id(), place);
		seat.take(official, allowance);
		this.seats.flush();
		this.acts.publish(AuditedChange.of(actor, "seat", seat.id(), "seat.taken")
			.to(inWords(seat, event, official))
			.because(allowance.reason()));
		return seat;
	}

	/** Set aside what binds whoever sits there and was not set aside before. */
	void allow(EventView event, Seat seat, int version, String reason, Actor actor) {
		SeatConflict conflict = this.conflicts.conflicts(event.id(), List.of(seat))
			.stream()
			.filter(SeatConflict::isUnsettled)
			.findFirst()
			.orElseThrow(
					() -> new ConflictException("seat-not-bound", Sentence.of("panels.seat-not-bound", seat.spoken())));
		seat.allow(version, new Seat.Allowance(reason, conflict.grounds()));
		this.seats.flush();
		this.acts.publish(AuditedChange.of(actor, "seat", seat.id(), "seat.bond-set-aside")
			.from("bound",
					"set aside: " + seat.label() + ", " + event.name() + ": " + conflict.official() + ": "
							+ Series.withSemicolons(conflict.grounds()))
			.because(reason));
	}

	void vacate(EventView event, Seat seat, int version, Actor actor) {
		this.rules.checkLeaving(event.id(), seat.place().kind());
		Official leaving = seat.official();
		seat.vacate(version);
		this.seats.flush();
		this.acts.publish(AuditedChange.of(actor, "seat", seat.id(), "seat.vacated")
			.from((leaving != null) ? inWords(seat, event, leaving) : "", ""));
	}

	Seat find(SeatId id) {
		return this.seats.findById(id.value()).orElseThrow(() -> unknown(id));
	}

	private static NotFoundException unknown(SeatId id) {
		return NotFoundException.of("seat", id);
	}

	/**
	 * All judges' seats of the event, made where they are not there yet, and the
	 * substitute's once somebody sits there.
	 */
	List<Seat> withCard(EventView event) {
		return SeatPlace.of(event)
			.stream()
			.filter((place) -> place.kind().hasCard())
			.flatMap((place) -> (place.kind() == SeatKind.JUDGE) ? Stream.of(at(event.id(), place))
					: taken(event, place))
			.toList();
	}

	private Stream<Seat> taken(EventView event, SeatPlace place) {
		return this.seats.findByEventIdAndKindAndNumber(event.id().value(), place.kind(), place.number())
			.filter(Seat::isTaken)
			.stream();
	}

	private Seat at(EventId event, SeatPlace place) {
		return this.seats.findByEventIdAndKindAndNumber(event.value(), place.kind(), place.number())
			.orElseGet(() -> this.seats.save(new Seat(this.acts.nextId(), event, place)));
	}

	private static String inWords(Seat seat, EventView event, Official official) {
		return seat.label() + ", " + event.name() + ": " + official.inWords();
	}

}
