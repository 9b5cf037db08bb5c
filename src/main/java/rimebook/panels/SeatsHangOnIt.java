package rimebook.panels;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/** An event in whose panel somebody has, or had, a seat stays. */
@Component
class SeatsHangOnIt implements CancellationGuard {

	private final SeatRepository seats;

	SeatsHangOnIt(SeatRepository seats) {
		this.seats = seats;
	}

	@Override
	public Optional<Sentence> againstRemoving(EventView event, List<SegmentView> segments) {
		boolean whole = segments.size() == event.segments().size();
		return (whole && !this.seats.findByEventId(event.id().value()).isEmpty())
				? Optional.of(Sentence.of("panels.seats-given", event.name())) : Optional.empty();
	}

}
