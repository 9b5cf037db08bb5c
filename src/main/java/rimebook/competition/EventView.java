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
 * @param listing where it is found
 * @param judging how it is judged and its result is signed
 * @param segments in order, one to three
 * @param cancellation why and since when it does not take place, {@code null} if it does
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record EventView(EventId id, Listing listing, DraftEvent.Judging judging, List<SegmentView> segments,
		@Nullable Cancellation cancellation, int version) {

	public EventView {
		segments = List.copyOf(segments);
	}

	/** Tell whether elements and components are judged, not places. */
	public boolean isJudgedByPoints() {
		return this.judging.method().isPoints();
	}

	/**
	 * Tell whether a technical panel calls elements, as where the judging has a rule set.
	 */
	public boolean hasTechnicalPanel() {
		return this.judging.points() != null;
	}

	/**
	 * The same event with another number of judges, for a segment in which fewer count
	 * than its panel has; an even number is then allowed.
	 */
	public EventView countedBy(int judges) {
		return (judges == this.judging.judges()) ? this : new EventView(this.id, this.listing,
				this.judging.countedBy(judges), this.segments, this.cancellation, this.version);
	}

	/**
	 * The rule set by which a segment of that kind is tabulated.
	 * @throws IllegalStateException for an event judged by points
	 */
	public PlacementRules rules(SegmentKind kind) {
		PlacementRules.CardTieBreak tieBreak = (kind == SegmentKind.FREE)
				? this.judging.policies().freeSkatingTieBreak() : kind.cardTieBreak();
		PlacementRules.EvenPanel evenPanel = this.judging.evenPanelReason().isEmpty() ? PlacementRules.EvenPanel.REFUSE
				: PlacementRules.EvenPanel.ALLOW;
		return new PlacementRules(this.judging.method().placement(), tieBreak, this.judging.policies().sharedOrdinals(),
				this.judging.policies().equalJudgesInFavour(), evenPanel, this.judging.policies().zeroMark(),
				this.judging.policies().disqualifiedPlaces());
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

	/** Why the event does not take place, empty if it does. */
	public String cancelled() {
		return Cancellation.reasonOf(this.cancellation);
	}

	/** Tell whether the event as a whole is cancelled. */
	public boolean isCancelled() {
		return this.cancellation != null;
	}

	/** Tell whether the segment is cancelled, alone or with the whole event. */
	public boolean isCancelled(SegmentId id) {
		return isCancelled() || segment(id).isCancelled();
	}

	/** Why the segment does not take place; empty if it does. */
	public String whyCancelled(SegmentId id) {
		return isCancelled() ? cancelled() : segment(id).cancelled();
	}

	/**
	 * The event without its cancelled segments, as its result is put together: those left
	 * are counted from 1.
	 */
	public EventView held() {
		List<SegmentView> left = this.segments.stream().filter((segment) -> !segment.isCancelled()).toList();
		return new EventView(this.id, this.listing, this.judging,
				IntStream.range(0, left.size()).mapToObj((i) -> left.get(i).at(i + 1)).toList(), this.cancellation,
				this.version);
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
		return new DraftEvent(name(), this.judging, this.segments.stream().map(SegmentView::facts).toList());
	}

	/** The facts of this event as a draft, without one of its segments. */
	DraftEvent draftWithout(SegmentId id) {
		return new DraftEvent(name(), this.judging,
				this.segments.stream().filter((segment) -> !segment.id().equals(id)).map(SegmentView::facts).toList());
	}

	/** The facts in one line, for the record. */
	String inWords() {
		String all = this.segments.stream().map(EventView::inWords).collect(Collectors.joining("; "));
		String even = this.judging.evenPanelReason().isEmpty() ? "" : " (even: " + this.judging.evenPanelReason() + ")";
		String waits = this.judging.signatureWaits() ? "" : "; signed before protests end";
		return "%s, %s, %d judges%s; %s; %s%s".formatted(name(), this.judging.method(), this.judging.judges(), even,
				all, rulesInWords(), waits);
	}

	private String rulesInWords() {
		return (this.judging.points() != null)
				? "rule set " + this.judging.points().ruleSet() + ", level " + this.judging.points().level()
				: this.judging.policies().inWords();
	}

	private static String inWords(SegmentView segment) {
		return "%s (%s, factor %s, %d s %s)".formatted(segment.name(), segment.kind(),
				Hundredths.decimal(segment.factor()), segment.facts().programmeSeconds(), tolerance(segment));
	}

	private static String tolerance(SegmentView segment) {
		Integer shorter = segment.facts().shorterSeconds();
		int longer = segment.facts().toleranceSeconds();
		if (shorter == null) {
			return "+ %d s, no shortest".formatted(longer);
		}
		return (shorter == longer) ? "± %d s".formatted(longer) : "+ %d s - %d s".formatted(longer, shorter);
	}

	/** The competition that it belongs to. */
	public CompetitionId competition() {
		return this.listing.competition();
	}

	/** Its name in public addresses, unique within the competition. */
	public String slug() {
		return this.listing.slug();
	}

	/** Its name, unlike those of the other events of the competition. */
	public String name() {
		return this.listing.name();
	}

	/**
	 * Where and under which names an event is found.
	 *
	 * @param position place in the order of the competition, from 1
	 * @param slug its name in public addresses, unique within the competition
	 */
	public record Listing(CompetitionId competition, int position, String slug, String name) {
	}

	/**
	 * That an event or a segment does not take place.
	 *
	 * @param reason why, never empty
	 * @param since when it was cancelled, UTC
	 */
	public record Cancellation(String reason, Instant since) {

		/** What is stored as a reason, empty for none, and a moment. */
		static @Nullable Cancellation of(String reason, @Nullable Instant since) {
			return (since != null) ? new Cancellation(reason, since) : null;
		}

		static String reasonOf(@Nullable Cancellation cancellation) {
			return (cancellation != null) ? cancellation.reason() : "";
		}

	}

}
