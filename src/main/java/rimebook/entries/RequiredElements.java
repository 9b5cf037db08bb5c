package rimebook.entries;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventCopied;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What each segment asks of planned elements, copied from a set or written down line by
 * line, and how plans keep to it. It warns and stops nobody: rulebooks change their lists
 * from season to season, and what counts is what is called. It may change as long as
 * plans may.
 */
@Service
@Transactional(readOnly = true)
public class RequiredElements {

	/** The key of the sentence that says that a segment asks and nothing is planned. */
	public static final String NOTHING_PLANNED = "required.nothing-planned";

	private final RequiredProgrammeRepository lists;

	private final PlannedProgrammeRepository plans;

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final PlanWindow window;

	private final Acts acts;

	RequiredElements(RequiredProgrammeRepository lists, PlannedProgrammeRepository plans, Competitions competitions,
			RuleSets ruleSets, PlanWindow window, Acts acts) {
		this.lists = lists;
		this.plans = plans;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.window = window;
		this.acts = acts;
	}

	/**
	 * Write down what a segment asks, in place of what it asked; without lines and
	 * figures it asks nothing any more.
	 * @throws RuleViolationException naming the field that does not fit
	 * @throws ConflictException {@code plan-fixed} once the segment is opened;
	 * {@code stale-version} if somebody else changed it since
	 * @throws rimebook.shared.NotFoundException if there is no such segment
	 */
	@Transactional
	public RequiredView set(SetRequired order, Actor actor) {
		EventView event = this.competitions.eventOf(order.segment());
		this.window.hold(event, order.segment());
		RequiredList list = new RequiredList(new RequiredWords(this.ruleSets, event).read(order.typed()), order.least(),
				order.most());
		return write(order, list, event.segment(order.segment()), actor);
	}

	private RequiredView write(SetRequired order, RequiredList list, SegmentView segment, Actor actor) {
		RequiredProgramme row = this.lists.findById(order.segment().value())
			.orElseGet(() -> new RequiredProgramme(order.segment()));
		RequiredView before = row.view();
		row.write(order.copiedFrom(), list, order.version());
		RequiredView now = row.view();
		if (now.inWords().equals(before.inWords())) {
			return before;
		}
		RequiredView kept = this.lists.saveAndFlush(row).view();
		this.acts.publish(AuditedChange.of(actor, "required-list", order.segment(), "required-list.set")
			.from(before.list().isEmpty() ? "" : segment.name() + ": " + before.inWords(),
					segment.name() + ": " + kept.inWords()));
		return kept;
	}

	/** The segments of an event that is made like another ask the same. */
	@EventListener
	@Transactional
	public void copy(EventCopied copied) {
		List<SegmentView> originals = this.competitions.event(copied.original()).segments();
		List<SegmentView> copies = this.competitions.event(copied.copy()).segments();
		Map<SegmentId, RequiredView> known = of(originals.stream().map(SegmentView::id).toList());
		for (int i = 0; i < Math.min(originals.size(), copies.size()); i++) {
			RequiredView original = known.get(originals.get(i).id());
			if (original != null && !original.list().isEmpty()) {
				RequiredList list = original.list();
				write(new SetRequired(copies.get(i).id(), original.copiedFrom(), list.written(), list.least(),
						list.most(), RequiredView.NONE), list, copies.get(i), copied.actor());
			}
		}
	}

	/** What a segment asks; nothing where nobody wrote it down. */
	public RequiredView of(SegmentId segment) {
		return this.lists.findById(segment.value())
			.map(RequiredProgramme::view)
			.orElseGet(() -> RequiredView.none(segment));
	}

	/**
	 * The same for those of these segments for which it was written down, one question.
	 */
	public Map<SegmentId, RequiredView> of(Collection<SegmentId> segments) {
		return this.lists.findAllById(segments.stream().map(SegmentId::value).toList())
			.stream()
			.map(RequiredProgramme::view)
			.collect(Collectors.toMap(RequiredView::segment, Function.identity()));
	}

	/** What a segment asks, a sentence each. */
	public List<Sentence> asked(EventView event, SegmentId segment) {
		return of(segment).list().spoken(names(event));
	}

	/** What of a plan is otherwise than its segment asks, a sentence each. */
	public List<Sentence> against(EventView event, PlannedElements.PlanView plan) {
		return of(plan.segment()).list().against(plan.codes(), names(event));
	}

	/**
	 * What teams may still put right: plans that are otherwise than asked, and segments
	 * that ask something and for which nothing is planned. Asks the database the same
	 * number of questions whatever the number of teams.
	 * @param events their events
	 * @param entries teams of these events
	 * @return sentences that name the segment; nothing of a team whose plans are as asked
	 */
	public Map<EntryId, List<Sentence>> otherwise(Collection<EventView> events, Collection<EntryView> entries) {
		Map<SegmentId, RequiredView> asking = of(
				events.stream().flatMap((event) -> event.held().segments().stream()).map(SegmentView::id).toList());
		asking.values().removeIf((one) -> one.list().isEmpty() || this.window.refusal(one.segment()).isPresent());
		Map<EntryId, List<Sentence>> otherwise = new HashMap<>();
		if (asking.isEmpty()) {
			return otherwise;
		}
		Map<EntryId, Map<SegmentId, List<String>>> plans = new HashMap<>();
		this.plans.findByEntryIn(entries.stream().map((entry) -> entry.id().value()).toList())
			.stream()
			.map(PlannedProgramme::view)
			.forEach((plan) -> plans.computeIfAbsent(plan.entry(), (entry) -> new HashMap<>())
				.put(plan.segment(), plan.codes()));
		for (EventView event : events) {
			List<SegmentView> segments = event.held()
				.segments()
				.stream()
				.filter((segment) -> asking.containsKey(segment.id()))
				.toList();
			entries.stream()
				.filter((entry) -> entry.event().equals(event.id()))
				.forEach((entry) -> add(otherwise, entry.id(),
						otherwise(event, segments, asking, plans.getOrDefault(entry.id(), Map.of()))));
		}
		return otherwise;
	}

	private static void add(Map<EntryId, List<Sentence>> all, EntryId entry, List<Sentence> otherwise) {
		if (!otherwise.isEmpty()) {
			all.put(entry, otherwise);
		}
	}

	private List<Sentence> otherwise(EventView event, List<SegmentView> segments, Map<SegmentId, RequiredView> asking,
			Map<SegmentId, List<String>> plans) {
		List<Sentence> otherwise = new ArrayList<>();
		for (SegmentView segment : segments) {
			List<String> codes = plans.getOrDefault(segment.id(), List.of());
			RequiredView asked = asking.get(segment.id());
			if (codes.isEmpty()) {
				otherwise.add(Sentence.of(NOTHING_PLANNED, segment.name()));
			}
			else if (asked != null) {
				asked.list()
					.against(codes, names(event))
					.forEach((one) -> otherwise.add(Sentence.of("required.of-segment", segment.name(), one)));
			}
		}
		return otherwise;
	}

	private Function<String, Sentence> names(EventView event) {
		return (sign) -> Sentence.ofTrade(this.ruleSets.elementNameOf(event, sign));
	}

	/**
	 * What a segment asks of planned elements.
	 *
	 * @param copiedFrom the set that it was copied from; empty for none
	 * @param version give it back with a change, so that nobody overwrites another's
	 */
	public record RequiredView(SegmentId segment, String copiedFrom, RequiredList list, int version) {

		/** The version of a list that was never written down. */
		static final int NONE = -1;

		static RequiredView none(SegmentId segment) {
			return new RequiredView(segment, "", RequiredList.NONE, NONE);
		}

		/** The lines as they are typed. */
		public String written() {
			return this.list.written();
		}

		String inWords() {
			return (this.list.isEmpty() ? "nothing is asked" : this.list.inWords())
					+ (this.copiedFrom.isEmpty() ? "" : ", copied from " + this.copiedFrom);
		}

	}

	/**
	 * The order to write down what a segment asks.
	 *
	 * @param copiedFrom the set that it was copied from; empty for none
	 * @param typed a line for each kind, such as {@code PB/B 1} or {@code GL 0-1}
	 * @param least the fewest elements in all, 1 to 40
	 * @param most the most elements in all, 1 to 40
	 * @param version of the list that was seen
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record SetRequired(SegmentId segment, String copiedFrom, String typed, @Nullable Integer least,
			@Nullable Integer most, int version) {

		private static final int MOST = 40;

		public SetRequired {
			copiedFrom = Required.optional("copiedFrom", copiedFrom, 60);
			typed = Required.optional("lines", typed, 1000);
			if (least != null) {
				Required.number("least", least, 1, MOST);
			}
			if (most != null) {
				Required.number("most", most, (least != null) ? least : 1, MOST);
			}
		}

	}

}
