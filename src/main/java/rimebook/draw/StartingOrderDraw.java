package rimebook.draw;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

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
	public StartingOrderView draw(Order order, Actor actor) {
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
	public Offer offer(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment);
		List<DrawMethod> methods = this.conditions.methods(event, segment);
		try {
			this.conditions.checkTime(event, segment);
			int starters = this.field.of(event, segment).size();
			return new Offer(methods, this.settings.groupMaximum(), starters, null);
		}
		catch (RimebookException ex) {
			return new Offer(methods, this.settings.groupMaximum(), 0, ex.sentence());
		}
	}

	/**
	 * Has a say before a segment is drawn or drawn again. Every bean of this type is
	 * asked, inside the transaction of the draw.
	 */
	@FunctionalInterface
	public interface Guard {

		/**
		 * Say why the segment must not be drawn any more, or nothing if it may.
		 * @return a whole sentence
		 */
		Optional<Sentence> refusal(SegmentId segment);

	}

	/**
	 * What may be drawn for a segment now.
	 *
	 * @param methods the methods that fit the segment, the usual one first
	 * @param groupMaximum the group maximum to start from
	 * @param field how many would start, 0 if that is not known yet
	 * @param refusal why nothing can be drawn now, {@code null} if it can
	 */
	public record Offer(List<DrawMethod> methods, int groupMaximum, int field, @Nullable Sentence refusal) {

		public Offer {
			methods = List.copyOf(methods);
		}

	}

	/**
	 * A starting order was drawn, for the first time or again.
	 *
	 * @param number the number of the order that is in force now
	 */
	public record Drawn(SegmentId segment, int number, AuditedChange change) implements AuditedEvent {

	}

	/**
	 * The referee's order to draw a segment.
	 *
	 * @param segment what is drawn
	 * @param method how; the first segment of an event takes
	 * {@link DrawMethod#WHOLE_FIELD} only
	 * @param seed the text that decides, up to 200 characters; blank to have one made
	 * @param groupMaximum the most that may share a warm-up group, 1 to 99
	 * @param reason why a drawn order is drawn again, up to 500 characters; may stay
	 * empty for the first draw of a segment
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record Order(SegmentId segment, DrawMethod method, String seed, int groupMaximum, String reason) {

		public Order {
			seed = oneLine(Required.optional("seed", seed, 200));
			groupMaximum = Required.number("groupMaximum", groupMaximum, 1, 99);
			reason = Required.optional("reason", reason, 500);
		}

		/** A seed is read aloud and typed into a shell: no tabs, no line breaks. */
		private static String oneLine(String seed) {
			if (seed.chars().anyMatch(Character::isISOControl)) {
				throw RuleViolationException.ofField("field-not-text", "seed", Sentence.of("draw.seed-not-one-line"));
			}
			return seed;
		}

	}

}
