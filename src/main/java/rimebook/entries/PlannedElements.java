package rimebook.entries;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * What teams mean to skate, segment by segment. A plan binds nobody: the technical panel
 * calls what it sees. It may change until the segment is opened.
 */
@Service
@Transactional(readOnly = true)
public class PlannedElements {

	private final PlannedProgrammeRepository plans;

	private final Entries entries;

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final PlanWindow window;

	private final Acts acts;

	PlannedElements(PlannedProgrammeRepository plans, Entries entries, Competitions competitions, RuleSets ruleSets,
			PlanWindow window, Acts acts) {
		this.acts = acts;
		this.plans = plans;
		this.entries = entries;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.window = window;
	}

	/**
	 * Put a plan in place of the one before; an empty one takes it away.
	 * @throws rimebook.shared.RuleViolationException naming the field {@code codes}: no
	 * code, or, in points judging, one that the table of values does not have
	 * @throws ConflictException {@code plan-fixed} once the segment is opened;
	 * {@code stale-version} if somebody else changed the plan since
	 * @throws NotFoundException if there is no such entry, or no such segment in its
	 * event
	 */
	@Transactional
	public PlanView plan(PlanElements order, Actor actor) {
		EventView event = this.competitions.event(this.entries.entry(order.entry()).event());
		SegmentView segment = event.segment(order.segment());
		this.window.hold(event, segment.id());
		List<String> codes = new PlannedCodes(this.ruleSets, event).read(order.typed());
		PlannedProgramme plan = this.plans.findByEntryAndSegment(order.entry().value(), segment.id().value())
			.orElseGet(() -> new PlannedProgramme(this.acts.nextId(), order.entry(), segment.id()));
		String before = plan.inWords();
		plan.plan(codes, order.version());
		PlanView kept = this.plans.saveAndFlush(plan).view();
		if (!before.equals(plan.inWords())) {
			this.acts.publish(AuditedChange.of(actor, "entry", order.entry(), "elements.planned")
				.from(words(segment, before), words(segment, plan.inWords())));
		}
		return kept;
	}

	private static String words(SegmentView segment, String codes) {
		return codes.isEmpty() ? "" : segment.name() + ": " + codes;
	}

	/**
	 * What a team means to skate in a segment; without codes where nothing was planned.
	 */
	public PlanView of(EntryId entry, SegmentId segment) {
		return this.plans.findByEntryAndSegment(entry.value(), segment.value())
			.map(PlannedProgramme::view)
			.orElseGet(() -> PlanView.none(entry, segment));
	}

	/** The segments for which each of these teams has planned something, one question. */
	public Map<EntryId, Set<SegmentId>> planned(Collection<EntryId> entries) {
		return this.plans.findByEntryIn(entries.stream().map(EntryId::value).toList())
			.stream()
			.map(PlannedProgramme::view)
			.filter((plan) -> !plan.codes().isEmpty())
			.collect(Collectors.groupingBy(PlanView::entry, Collectors.mapping(PlanView::segment, Collectors.toSet())));
	}

	/** Why no plan for a segment can change any more; empty if one can. */
	public Optional<Sentence> refusal(SegmentId segment) {
		return this.window.refusal(segment);
	}

	/**
	 * The elements that a team means to skate in one segment.
	 *
	 * @param codes in order; empty where nothing was planned
	 * @param version give it back with a change, so that nobody overwrites another's
	 */
	public record PlanView(EntryId entry, SegmentId segment, List<String> codes, int version) {

		/** The version of a plan that was never written down. */
		static final int NONE = -1;

		public PlanView {
			codes = List.copyOf(codes);
		}

		static PlanView none(EntryId entry, SegmentId segment) {
			return new PlanView(entry, segment, List.of(), NONE);
		}

	}

	/**
	 * What a team means to skate in a segment, in place of what was planned before.
	 *
	 * @param typed the codes in order, with blanks, commas or new lines between them
	 * @param version of the plan that was seen
	 */
	public record PlanElements(EntryId entry, SegmentId segment, String typed, int version) {
	}

	/**
	 * Has a say before planned elements are changed. Every bean of this type is asked,
	 * inside the transaction of the change.
	 */
	@FunctionalInterface
	public interface Guard {

		/**
		 * Say why the plans for a segment must stay as they are, or nothing if they may
		 * change.
		 * @return a whole sentence
		 */
		Optional<Sentence> refusal(SegmentId segment);

	}

}
