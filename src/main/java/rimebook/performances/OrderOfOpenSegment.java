package rimebook.performances;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.springframework.context.event.EventListener;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * Keeps the performances of an open segment to its starting order, in the transaction in
 * which that is drawn again or added to: until the first team is called the referee may
 * do both. A performance stays who it is and takes its new number; one whose team left
 * and was not drawn again goes, since nothing of it was skated.
 */
@Component
class OrderOfOpenSegment {

	/**
	 * Above every number that is drawn, for the moment in which numbers change places.
	 */
	private static final int ASIDE = 10_000;

	private final PerformanceRepository performances;

	private final StartingOrderDraw draw;

	private final SegmentOpening.FirstPerformances first;

	private final Acts acts;

	OrderOfOpenSegment(PerformanceRepository performances, StartingOrderDraw draw,
			SegmentOpening.FirstPerformances first, Acts acts) {
		this.performances = performances;
		this.draw = draw;
		this.first = first;
		this.acts = acts;
	}

	@EventListener
	void on(StartingOrderDraw.Drawn drawn) {
		SegmentId segment = drawn.segment();
		List<Performance> there = this.performances.findLockedBySegment(segment.value());
		if (there.isEmpty()) {
			return;
		}
		StartingOrderView order = this.draw.ofSegment(segment).orElseThrow();
		Map<EntryId, StartingOrderView.Start> starts = order.starts()
			.stream()
			.collect(Collectors.toMap(StartingOrderView.Start::entry, Function.identity()));
		Actor actor = drawn.change().actor();
		List<Performance> left = there.stream().filter((one) -> !starts.containsKey(one.entry())).toList();
		List<Performance> moved = there.stream()
			.filter((one) -> !left.contains(one) && !one.hasPlace(start(starts, one)))
			.toList();
		left.forEach((one) -> leaveOut(one, actor));
		renumber(moved, starts, actor);
		there.forEach((one) -> starts.remove(one.entry()));
		order.starts()
			.stream()
			.filter((start) -> starts.containsKey(start.entry()))
			.map((start) -> this.first.of(segment, start))
			.forEach(this.performances::save);
		if (!left.isEmpty() || !moved.isEmpty()) {
			this.acts.publish(new PerformanceEvent.Renumbered(segment,
					AuditedChange.of(actor, "segment", segment, "segment.renumbered")
						.from(there.size() + " performances by order " + (order.number() - 1),
								"by order %d; %d have another number, %d are left out".formatted(order.number(),
										moved.size(), left.size()))
						.because(drawn.change().reason())));
		}
	}

	/** Two passes: in between no number may be there twice. */
	private void renumber(List<Performance> moved, Map<EntryId, StartingOrderView.Start> starts, Actor actor) {
		List<String> before = moved.stream().map(Performance::placeInWords).toList();
		moved.forEach((one) -> one.renumber(ASIDE + start(starts, one).number(), start(starts, one).group()));
		this.performances.flush();
		moved.forEach((one) -> one.renumber(start(starts, one).number(), start(starts, one).group()));
		this.performances.flush();
		for (int i = 0; i < moved.size(); i++) {
			this.acts.publish(AuditedChange.of(actor, "performance", moved.get(i).id(), "performance.renumbered")
				.from(before.get(i), moved.get(i).placeInWords()));
		}
	}

	/**
	 * Let one go whose team was not drawn again.
	 * @throws ConflictException {@code draw-too-late} where something else refers to it
	 */
	private void leaveOut(Performance performance, Actor actor) {
		try {
			this.performances.delete(performance);
			this.performances.flush();
		}
		catch (DataIntegrityViolationException ex) {
			throw new ConflictException("draw-too-late",
					Sentence.of("performances.left-out-stays", performance.startNumber()));
		}
		this.acts.publish(AuditedChange.of(actor, "performance", performance.id(), "performance.left-out")
			.from(performance.placeInWords() + ", " + performance.status().spoken().english(), ""));
	}

	private static StartingOrderView.Start start(Map<EntryId, StartingOrderView.Start> starts, Performance one) {
		return Objects.requireNonNull(starts.get(one.entry()));
	}

}
