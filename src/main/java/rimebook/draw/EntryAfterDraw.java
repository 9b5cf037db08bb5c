package rimebook.draw;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryGuard;
import rimebook.entries.EntryView;
import rimebook.wording.Sentence;

/**
 * What the draw has to say of teams that come later. One that comes after the draw of the
 * first segment waits for the referee to give it a number; once a later segment is drawn
 * from the standing it could have no place there. A team that was drawn never leaves the
 * event that it was drawn in: it withdraws, and its number stays empty.
 */
@Component
class EntryAfterDraw implements EntryGuard {

	private final FieldFixedAfterDraw field;

	private final StartingOrderRepository orders;

	private final Competitions competitions;

	EntryAfterDraw(FieldFixedAfterDraw field, StartingOrderRepository orders, Competitions competitions) {
		this.field = field;
		this.orders = orders;
		this.competitions = competitions;
	}

	@Override
	public Optional<Sentence> refusesEntry(EventId event) {
		EventView view = this.competitions.event(event);
		return view.segments()
			.stream()
			.filter((segment) -> !view.previousSegments(segment.id()).isEmpty())
			.filter((segment) -> this.orders.existsBySegmentId(segment.id().value()))
			.findFirst()
			.map((segment) -> Sentence.of("draw.no-entry-after-draw", segment.name()));
	}

	/** Numbers are given one by one, so nobody comes from a file. */
	@Override
	public Optional<Sentence> refusesImport(EventId event) {
		return this.field.drawnSegment(event)
			.map((segment) -> Sentence.of("draw.no-import-after-draw", segment.name()));
	}

	@Override
	public Optional<Sentence> staysInEvent(EntryView entry) {
		return this.competitions.event(entry.event())
			.segments()
			.stream()
			.filter((segment) -> wasDrawn(entry, segment))
			.findFirst()
			.map((segment) -> Sentence.of("draw.team-drawn", entry.team().name(), segment.name()));
	}

	/** In whatever order of the segment, since each stays readable. */
	private boolean wasDrawn(EntryView entry, SegmentView segment) {
		return this.orders.findBySegmentIdOrderByNumberDesc(segment.id().value())
			.stream()
			.flatMap((order) -> order.view().starts().stream())
			.anyMatch((start) -> start.entry().equals(entry.id()));
	}

}
