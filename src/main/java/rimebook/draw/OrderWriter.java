package rimebook.draw;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;

/** Draws a field, keeps the order and tells everybody. */
@Component
class OrderWriter {

	private final StartingOrderRepository orders;

	private final Seeds seeds;

	private final Acts acts;

	OrderWriter(StartingOrderRepository orders, Seeds seeds, Acts acts) {
		this.acts = acts;
		this.orders = orders;
		this.seeds = seeds;
	}

	StartingOrderView write(StartingOrderDraw.Order order, int number, SegmentView segment, List<Starter> field,
			Actor actor) {
		String seed = order.seed().isEmpty() ? this.seeds.next() : order.seed();
		List<Lot> lots = field.stream().map((starter) -> starter.lot(seed, segment.name())).toList();
		StartingOrder drawn = new StartingOrder(this.acts.nextId(), number, order, seed, this.acts.now(), actor.name())
			.with(Drawing.of(order.method(), lots, order.groupMaximum()));
		StartingOrderView view = store(drawn).view();
		publish(view, segment, field, actor);
		return view;
	}

	/** Keep an order in which late teams follow those that were drawn. */
	StartingOrderView add(StartingOrder before, SegmentView segment, List<Starter> late, String reason, Actor actor) {
		List<Lot> lots = late.stream()
			.map((starter) -> starter.lot(before.seed(), segment.name()))
			.sorted(Lot.BY_TICKET)
			.toList();
		StartingOrder longer = new StartingOrder(this.acts.nextId(), before, lots, reason, this.acts.now(),
				actor.name());
		StartingOrderView view = store(longer).view();
		AuditedChange change = AuditedChange.of(actor, "starting-order", view.segment(), "starting-order.added-to")
			.from("%s, order %d, numbers 1 to %d".formatted(segment.name(), before.number(),
					view.starts().size() - lots.size()),
					"%s, order %d, added at the end: %s".formatted(segment.name(), view.number(),
							inWords(view.starts().subList(view.starts().size() - lots.size(), view.starts().size()),
									late)))
			.because(reason);
		this.acts.publish(new StartingOrderDraw.Drawn(view.segment(), view.number(), change));
		return view;
	}

	/** Two draws at once would get the same number; the database lets one through. */
	private StartingOrder store(StartingOrder drawn) {
		try {
			return this.orders.saveAndFlush(drawn);
		}
		catch (DataIntegrityViolationException ex) {
			throw ConflictException.stale("starting-order");
		}
	}

	private void publish(StartingOrderView order, SegmentView segment, List<Starter> field, Actor actor) {
		boolean again = order.number() > 1;
		AuditedChange change = AuditedChange
			.of(actor, "starting-order", order.segment(), again ? "starting-order.redrawn" : "starting-order.drawn")
			.from(again ? segment.name() + ", order " + (order.number() - 1) : "", inWords(order, segment, field))
			.because(order.act().reason());
		this.acts.publish(new StartingOrderDraw.Drawn(order.segment(), order.number(), change));
	}

	private static String inWords(StartingOrderView order, SegmentView segment, List<Starter> field) {
		return "%s, order %d, seed %s, groups of at most %d: ".formatted(segment.name(), order.number(), order.seed(),
				order.how().groupMaximum()) + inWords(order.starts(), field);
	}

	private static String inWords(List<StartingOrderView.Start> starts, List<Starter> field) {
		Map<EntryId, Starter> starters = field.stream()
			.collect(Collectors.toMap((starter) -> starter.entry().id(), Function.identity()));
		return starts.stream()
			.map((start) -> start.number() + " " + Objects.requireNonNull(starters.get(start.entry())).inWords())
			.collect(Collectors.joining("; "));
	}

}
