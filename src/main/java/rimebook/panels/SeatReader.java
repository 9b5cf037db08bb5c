package rimebook.panels;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.accounts.SeatCodes;
import rimebook.competition.EventId;
import rimebook.competition.EventView;

/** Seats with their codes and tablets, in the order of the panel. */
@Component
class SeatReader {

	private final SeatRepository seats;

	private final SeatCodes codes;

	SeatReader(SeatRepository seats, SeatCodes codes) {
		this.seats = seats;
		this.codes = codes;
	}

	SeatView of(Seat seat) {
		return of(List.of(seat)).get(0);
	}

	List<SeatView> of(List<Seat> some) {
		Map<UUID, SeatCodes.Access> access = this.codes
			.accessTo(some.stream().map((seat) -> seat.id().value()).toList());
		return some.stream().map((seat) -> seat.view(Objects.requireNonNull(access.get(seat.id().value())))).toList();
	}

	void noteTablet(SeatId seat, int cards, boolean faulty) {
		this.codes.noteTablet(seat.value(), cards, faulty);
	}

	PanelView panel(EventView event) {
		List<Seat> used = used(event);
		return new PanelView(event.id(), of(used), empty(event, used));
	}

	/** The events in whose panels somebody sits, asked once for all of them. */
	Set<EventId> taken() {
		return this.seats.taken().stream().map(EventId::new).collect(Collectors.toSet());
	}

	/** The places that must be filled and are not. */
	List<SeatPlace> empty(EventView event, List<Seat> used) {
		return SeatPlace.of(event)
			.stream()
			.filter(SeatPlace::isRequired)
			.filter((place) -> used.stream().noneMatch((seat) -> seat.isAt(place) && seat.isTaken()))
			.toList();
	}

	/**
	 * Seats of the event's places that exist; what a larger panel left over is not one.
	 */
	List<Seat> used(EventView event) {
		List<Seat> all = this.seats.findByEventId(event.id().value());
		return SeatPlace.of(event)
			.stream()
			.flatMap((place) -> all.stream().filter((seat) -> seat.isAt(place)))
			.toList();
	}

}
