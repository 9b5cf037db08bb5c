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
	 * results are final; {@code draw-too-late} once the first team of the segment is
	 * called; {@code stale-version} if another order is in force than the one that was
	 * seen
	 * @throws rimebook.shared.RuleViolationException {@code draw-method-not-fitting},
	 * {@code draw-reason-missing}, {@code draw-no-entries} or {@code standing-incomplete}
	 */
	@Transactional
	public StartingOrderView draw(Order order, Actor actor) {
		EventView event = this.competitions.eventOf(order.segment());
		this.competitions.holding(event.id());
		int number = 1 + ofSegment(order.segment()).map(StartingOrderView::number).orElse(0);
		if (order.seen() != null) {
			ConflictException.requireSeen("starting-order", order.seen(), number - 1);
		}
		this.conditions.checkTime(event, order.segment());
		this.conditions.checkMethod(event, order);
		this.conditions.checkReason(number, order);
		List<Starter> starters = this.field.of(event, order.segment());
		return this.writer.write(order, number, this.competitions.segment(order.segment()), starters, actor);
	}

	/**
	 * Give every team that came after the draw the next number at the end of the last
	 * group; everybody else keeps number and group. It is done by a further order; who is
	 * added by mistake withdraws and leaves a gap at the end.
	 * @throws ConflictException {@code stale-version} if another order is in force;
	 * {@code nobody-to-add}; {@code draw-not-now}; {@code draw-too-late} once the first
	 * team of the segment is called
	 */
	@Transactional
	public StartingOrderView add(Addition order, Actor actor) {
		EventView event = this.competitions.eventOf(order.segment());
		this.competitions.holding(event.id());
		this.conditions.checkTimeToAdd(event, order.segment());
		StartingOrder before = this.orders.findFirstBySegmentIdOrderByNumberDesc(order.segment().value())
			.orElseThrow(() -> nobodyToAdd());
		ConflictException.requireSeen("starting-order", order.seen(), before.number());
		List<Starter> late = this.field.leftOut(before.view(), event, order.segment());
		if (late.isEmpty()) {
			throw nobodyToAdd();
		}
		return this.writer.add(before, event.segment(order.segment()), late, order.lateReason(), actor);
	}

	private static ConflictException nobodyToAdd() {
		return new ConflictException("nobody-to-add", Sentence.of("draw.nobody-to-add"));
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
			.orElseGet(List::of)
			.stream()
			.map((starter) -> starter.entry().team().name())
			.sorted(String.CASE_INSENSITIVE_ORDER)
			.toList();
	}

	/**
	 * What may become of the teams that are not in the order in force; empty where there
	 * are none, or the field is not known now.
	 */
	public Optional<LateTeams> late(SegmentId segment) {
		StartingOrderView order = ofSegment(segment).orElse(null);
		if (order == null) {
			return Optional.empty();
		}
		try {
			List<String> teams = leftOut(segment);
			return teams.isEmpty() ? Optional.empty() : Optional.of(LateTeams.of(teams, order, whyNotAdded(segment)));
		}
		catch (RimebookException ex) {
			return Optional.empty();
		}
	}

	/** Tell whether teams may still follow those that were drawn. */
	public boolean mayAdd(SegmentId segment) {
		return whyNotAdded(segment) == null;
	}

	private @Nullable Sentence whyNotAdded(SegmentId segment) {
		try {
			this.conditions.checkTimeToAdd(this.competitions.eventOf(segment), segment);
			return null;
		}
		catch (ConflictException ex) {
			return ex.sentence();
		}
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
			return new Offer(methods, this.settings.groupMaximum(), starters, null, this.conditions.caution(segment));
		}
		catch (RimebookException ex) {
			return new Offer(methods, this.settings.groupMaximum(), 0, ex.sentence(), null);
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

		/**
		 * Say what drawing the segment again would change for people who have its order
		 * before them already, or nothing if it would not.
		 * @return a whole sentence
		 */
		default Optional<Sentence> caution(SegmentId segment) {
			return Optional.empty();
		}

		/**
		 * Say why no team may follow those that were drawn any more, or nothing if one
		 * may.
		 * @return a whole sentence
		 */
		default Optional<Sentence> refusesAddition(SegmentId segment) {
			return refusal(segment);
		}

	}

	/**
	 * Teams that came after the draw, and what the next numbers would mean.
	 *
	 * @param teams their names
	 * @param order the number of the order in force, to be given back
	 * @param first the first number they would get
	 * @param group the last warm-up group, which they would be in
	 * @param inGroup how many would be in it then, withdrawn teams counted
	 * @param groupMaximum the most that an order was to have in a group
	 * @param refusal why they cannot get them now, {@code null} if they can
	 */
	public record LateTeams(List<String> teams, int order, int first, int group, int inGroup, int groupMaximum,
			@Nullable Sentence refusal) {

		public LateTeams {
			teams = List.copyOf(teams);
		}

		static LateTeams of(List<String> teams, StartingOrderView order, @Nullable Sentence refusal) {
			int group = order.starts().get(order.starts().size() - 1).group();
			long there = order.starts().stream().filter((start) -> start.group() == group).count();
			return new LateTeams(teams, order.number(), order.starts().size() + 1, group, (int) there + teams.size(),
					order.how().groupMaximum(), refusal);
		}

		/** Tell whether the last group would be larger than groups were to be. */
		public boolean isLarge() {
			return this.inGroup > this.groupMaximum;
		}

	}

	/**
	 * What may be drawn for a segment now.
	 *
	 * @param methods the methods that fit the segment, the usual one first
	 * @param groupMaximum the group maximum to start from
	 * @param field how many would start, 0 if that is not known yet
	 * @param refusal why nothing can be drawn now, {@code null} if it can
	 * @param caution what drawing again would change for others, {@code null} for nothing
	 */
	public record Offer(List<DrawMethod> methods, int groupMaximum, int field, @Nullable Sentence refusal,
			@Nullable Sentence caution) {

		public Offer {
			methods = List.copyOf(methods);
		}

	}

	/**
	 * A starting order was drawn, for the first time or again, or teams were added to it.
	 *
	 * @param number the number of the order that is in force now
	 */
	public record Drawn(SegmentId segment, int number, AuditedChange change) implements AuditedEvent {

	}

	/**
	 * The referee's order to let teams follow those that were drawn.
	 *
	 * @param seen the number of the order that was looked at
	 * @param lateReason why they come late, up to 500 characters
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record Addition(SegmentId segment, int seen, String lateReason) {

		public Addition {
			lateReason = Required.text("lateReason", lateReason, 500);
		}

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
	 * @param seen the number of the order that was looked at, 0 for none; {@code null} to
	 * draw whatever is in force
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record Order(SegmentId segment, DrawMethod method, String seed, int groupMaximum, String reason,
			@Nullable Integer seen) {

		public Order(SegmentId segment, DrawMethod method, String seed, int groupMaximum, String reason) {
			this(segment, method, seed, groupMaximum, reason, null);
		}

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
