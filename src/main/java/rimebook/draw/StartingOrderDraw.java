package rimebook.draw;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;

/**
 * Draws starting orders and keeps every one that was drawn.
 * <p>
 * Each entry gets a {@link DrawTicket}; tickets in ascending order are the starting
 * order, in later segments inside the groups that the standing gives. Who knows the seed
 * and the names can repeat it all; the text of each ticket is kept, so that this holds
 * after a name was mended.
 */
@Service
@Transactional(readOnly = true)
public class StartingOrderDraw {

	private final StartingOrderRepository orders;

	private final Competitions competitions;

	private final DrawConditions conditions;

	private final StartingField field;

	private final OrderWriter writer;

	private final DrawSettings settings;

	StartingOrderDraw(StartingOrderRepository orders, Competitions competitions, DrawConditions conditions,
			StartingField field, OrderWriter writer, DrawSettings settings) {
		this.orders = orders;
		this.competitions = competitions;
		this.conditions = conditions;
		this.field = field;
		this.writer = writer;
		this.settings = settings;
	}

	/**
	 * Draw a segment, for the first time or again. What was drawn before stays readable.
	 * @return the order now in force
	 * @throws ConflictException {@code draw-not-now} while entries are open or after the
	 * results are final; {@code draw-too-late} once the segment is opened;
	 * {@code stale-version} if somebody else drew at the same moment
	 * @throws rimebook.shared.RuleViolationException {@code draw-method-not-fitting},
	 * {@code draw-reason-missing}, {@code draw-no-entries} or {@code standing-incomplete}
	 */
	@Transactional
	public StartingOrderView draw(DrawOrder order, Actor actor) {
		EventView event = this.competitions.eventOf(order.segment());
		this.competitions.holding(event.id());
		int number = 1 + ofSegment(order.segment()).map(StartingOrderView::number).orElse(0);
		this.conditions.checkTime(event, order.segment());
		this.conditions.checkMethod(event, order);
		this.conditions.checkReason(number, order);
		List<Starter> starters = this.field.of(event, order.segment());
		return this.writer.write(order, number, this.competitions.segment(order.segment()), starters, actor);
	}

	/** The starting order in force, if the segment is drawn. */
	public Optional<StartingOrderView> ofSegment(SegmentId segment) {
		return this.orders.findFirstBySegmentIdOrderByNumberDesc(segment.value()).map(StartingOrder::view);
	}

	/** Every order that was ever drawn for the segment, the one in force first. */
	public List<StartingOrderView> everDrawn(SegmentId segment) {
		return this.orders.findBySegmentIdOrderByNumberDesc(segment.value()).stream().map(StartingOrder::view).toList();
	}

	/** How many orders were ever drawn for these segments, repeated draws included. */
	public int timesDrawn(Collection<SegmentId> segments) {
		return this.orders.countBySegmentIdIn(segments.stream().map(SegmentId::value).toList());
	}

	/**
	 * The teams that start in a segment and are not in the order in force, because they
	 * came back after it was drawn; by name. Empty before the draw.
	 */
	public List<String> leftOut(SegmentId segment) {
		return ofSegment(segment).map((order) -> this.field.leftOut(order, this.competitions.eventOf(segment), segment))
			.orElseGet(List::of);
	}

	/**
	 * What may be drawn now.
	 * @throws rimebook.shared.NotFoundException if there is no such segment
	 */
	public DrawOffer offer(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment);
		List<DrawMethod> methods = this.conditions.methods(event, segment);
		try {
			this.conditions.checkTime(event, segment);
			int starters = this.field.of(event, segment).size();
			return new DrawOffer(methods, this.settings.groupMaximum(), starters, null);
		}
		catch (RimebookException ex) {
			return new DrawOffer(methods, this.settings.groupMaximum(), 0, ex.getMessage());
		}
	}

}
