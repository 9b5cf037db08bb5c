package rimebook.competition;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.shared.NotFoundException;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;

/**
 * An event of a competition as others see it.
 *
 * @param position place in the order of the competition, from 1
 * @param slug its name in public addresses, unique within the competition
 * @param judges how many judges mark it
 * @param evenPanelReason why the number of judges may be even; empty when it is odd
 * @param policies the chosen value of every policy that rulebooks leave open
 * @param points by which rules points are counted, {@code null} for placement judging;
 * {@link RuleSets} has them
 * @param segments in order, one to three
 * @param signatureWaits whether a result is signed only after the time for protests
 * @param cancelled why the event does not take place, empty if it does
 * @param cancelledAt since when, UTC, {@code null} if it takes place
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record EventView(EventId id, CompetitionId competition, int position, String slug, String name,
		JudgingMethod method, int judges, String evenPanelReason, JudgingPolicies policies,
		DraftEvent.@Nullable PointsChoice points, List<SegmentView> segments, boolean signatureWaits, String cancelled,
		@Nullable Instant cancelledAt, int version) {

	public EventView {
		segments = List.copyOf(segments);
	}

	/** As the full form, for an event that takes place and waits for protests. */
	public EventView(EventId id, CompetitionId competition, int position, String slug, String name,
			JudgingMethod method, int judges, String evenPanelReason, JudgingPolicies policies,
			DraftEvent.@Nullable PointsChoice points, List<SegmentView> segments, int version) {
		this(id, competition, position, slug, name, method, judges, evenPanelReason, policies, points, segments, true,
				"", null, version);
	}

	/** As that form, for placement judging. */
	public EventView(EventId id, CompetitionId competition, int position, String slug, String name,
			JudgingMethod method, int judges, String evenPanelReason, JudgingPolicies policies,
			List<SegmentView> segments, int version) {
		this(id, competition, position, slug, name, method, judges, evenPanelReason, policies, null, segments, version);
	}

	/** Tell whether elements and components are judged, not places. */
	public boolean isJudgedByPoints() {
		return this.method.isPoints();
	}

	/**
	 * Tell whether a technical panel calls elements, from the rule set of
	 * {@link #points}.
	 */
	public boolean hasTechnicalPanel() {
		return this.points != null;
	}

	/**
	 * The same event with another number of judges, for a segment in which fewer count
	 * than its panel has; an even number is then allowed.
	 */
	public EventView countedBy(int judges) {
		return (judges == this.judges) ? this
				: new EventView(this.id, this.competition, this.position, this.slug, this.name, this.method, judges,
						"A judge is left out of a segment.", this.policies, this.points, this.segments,
						this.signatureWaits, this.cancelled, this.cancelledAt, this.version);
	}

	/**
	 * The rule set by which a segment of that kind is tabulated.
	 * @throws IllegalStateException for an event judged by points
	 */
	public PlacementRules rules(SegmentKind kind) {
		PlacementRules.CardTieBreak tieBreak = (kind == SegmentKind.FREE) ? this.policies.freeSkatingTieBreak()
				: kind.cardTieBreak();
		PlacementRules.EvenPanel evenPanel = this.evenPanelReason.isEmpty() ? PlacementRules.EvenPanel.REFUSE
				: PlacementRules.EvenPanel.ALLOW;
		return new PlacementRules(this.method.placement(), tieBreak, this.policies.sharedOrdinals(),
				this.policies.equalJudgesInFavour(), evenPanel, this.policies.zeroMark(),
				this.policies.disqualifiedPlaces());
	}

	/**
	 * The segment of that identity.
	 * @throws NotFoundException if it is not one of this event
	 */
	public SegmentView segment(SegmentId id) {
		return this.segments.stream()
			.filter((segment) -> segment.id().equals(id))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("segment", id));
	}

	/** Tell whether the event as a whole is cancelled. */
	public boolean isCancelled() {
		return !this.cancelled.isEmpty();
	}

	/** Tell whether the segment is cancelled, alone or with the whole event. */
	public boolean isCancelled(SegmentId id) {
		return isCancelled() || segment(id).isCancelled();
	}

	/** Why the segment does not take place; empty if it does. */
	public String whyCancelled(SegmentId id) {
		return isCancelled() ? this.cancelled : segment(id).cancelled();
	}

	/**
	 * The event without its cancelled segments, as its result is put together: those left
	 * are counted from 1.
	 */
	public EventView held() {
		List<SegmentView> left = this.segments.stream().filter((segment) -> !segment.isCancelled()).toList();
		return new EventView(this.id, this.competition, this.position, this.slug, this.name, this.method, this.judges,
				this.evenPanelReason, this.policies, this.points,
				IntStream.range(0, left.size()).mapToObj((i) -> left.get(i).at(i + 1)).toList(), this.signatureWaits,
				this.cancelled, this.cancelledAt, this.version);
	}

	/**
	 * The segments that come before that one, in order, without cancelled ones; empty for
	 * the first.
	 */
	public List<SegmentView> previousSegments(SegmentId id) {
		int position = segment(id).position();
		return this.segments.stream()
			.filter((segment) -> segment.position() < position && !segment.isCancelled())
			.toList();
	}

	/** Tell whether the event's result is complete after that segment. */
	public boolean isLastSegment(SegmentId id) {
		int position = segment(id).position();
		return this.segments.stream().noneMatch((other) -> other.position() > position && !other.isCancelled());
	}

	/** The facts of this event as a draft, for a form or a copy. */
	public DraftEvent draft() {
		return new DraftEvent(this.name, this.method, this.judges, this.evenPanelReason, this.policies, this.points,
				this.segments.stream().map(SegmentView::draft).toList(), this.signatureWaits);
	}

	/** The facts of this event as a draft, without one of its segments. */
	DraftEvent draftWithout(SegmentId id) {
		return new DraftEvent(this.name, this.method, this.judges, this.evenPanelReason, this.policies, this.points,
				this.segments.stream().filter((segment) -> !segment.id().equals(id)).map(SegmentView::draft).toList(),
				this.signatureWaits);
	}

	/** The facts in one line, for the record. */
	String inWords() {
		String all = this.segments.stream().map(EventView::inWords).collect(Collectors.joining("; "));
		String even = this.evenPanelReason.isEmpty() ? "" : " (even: " + this.evenPanelReason + ")";
		String waits = this.signatureWaits ? "" : "; signed before protests end";
		return "%s, %s, %d judges%s; %s; %s%s".formatted(this.name, this.method, this.judges, even, all, rulesInWords(),
				waits);
	}

	private String rulesInWords() {
		return (this.points != null) ? "rule set " + this.points.ruleSet() + ", level " + this.points.level()
				: this.policies.inWords();
	}

	private static String inWords(SegmentView segment) {
		return "%s (%s, factor %s, %d s %s)".formatted(segment.name(), segment.kind(),
				Hundredths.decimal(segment.factor()), segment.programmeSeconds(), tolerance(segment));
	}

	private static String tolerance(SegmentView segment) {
		Integer shorter = segment.shorterSeconds();
		int longer = segment.toleranceSeconds();
		if (shorter == null) {
			return "+ %d s, no shortest".formatted(longer);
		}
		return (shorter == longer) ? "± %d s".formatted(longer) : "+ %d s - %d s".formatted(longer, shorter);
	}

}
