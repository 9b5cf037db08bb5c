package rimebook.competition;

import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;

/**
 * Says whether anything that hangs on an event may still change. Every facade that
 * enters, draws, seats, marks, posts, signs, corrects or takes a protest asks it inside
 * its transaction, after it has taken hold of what it changes.
 *
 * <p>
 * A final competition allows nothing that could change a result: no entry, draw, seat,
 * card, posting, signature, re-opening, correction or protest, and no question or ruling,
 * which would come too late. Reading, printing and exporting go on. An archived one
 * allows nothing more than that. Both are taken back by an administrator, with a reason
 * ({@link Competitions#takeBack}). Of a cancelled event or segment nothing changes until
 * it is brought back.
 */
@Service
// A page that shows the refusal goes on with its transaction.
@Transactional(propagation = Propagation.MANDATORY, noRollbackFor = ConflictException.class)
public class StillOpen {

	private final EventRepository events;

	StillOpen(EventRepository events) {
		this.events = events;
	}

	/**
	 * Refuse unless the segment, its event and its competition are open.
	 * @throws ConflictException {@code competition-final}, {@code competition-archived},
	 * {@code event-cancelled} or {@code segment-cancelled}
	 */
	public void require(SegmentId segment) {
		refusal(segment).ifPresent((closed) -> {
			throw closed;
		});
	}

	/**
	 * Refuse unless the event and its competition are open.
	 * @throws ConflictException {@code competition-final}, {@code competition-archived}
	 * or {@code event-cancelled}
	 */
	public void require(EventId event) {
		refusal(event).ifPresent((closed) -> {
			throw closed;
		});
	}

	/** What would refuse a change of the segment now, if anything does. */
	public Optional<ConflictException> refusal(SegmentId segment) {
		return this.events.openness(segment.value())
			.orElseThrow(() -> NotFoundException.of("segment", segment))
			.refusal();
	}

	/** What would refuse a change of the event now, if anything does. */
	public Optional<ConflictException> refusal(EventId event) {
		return this.events.opennessOfEvent(event.value())
			.orElseThrow(() -> NotFoundException.of("event", event))
			.refusal();
	}

}
