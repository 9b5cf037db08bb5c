package rimebook.results;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.StillOpen;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Publishes the next version of a segment and of its event. All segments of the event are
 * locked first, always in one order, so that versions are numbered without gaps.
 */
@Component
class StandingUpdate {

	private final SegmentResultRepository results;

	private final Standings standings;

	private final Competitions competitions;

	private final SegmentRun run;

	private final StandingDrafts drafts;

	private final VersionWriter writer;

	private final PostingBook postings;

	private final StillOpen stillOpen;

	StandingUpdate(SegmentResultRepository results, Standings standings, Competitions competitions, SegmentRun run,
			StandingDrafts drafts, VersionWriter writer, PostingBook postings, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.results = results;
		this.standings = standings;
		this.competitions = competitions;
		this.run = run;
		this.drafts = drafts;
		this.writer = writer;
		this.postings = postings;
	}

	/** Begin the result of a segment that was just opened. */
	void begin(SegmentId segment) {
		this.results.save(new SegmentResult(segment));
	}

	Held held(SegmentId segment, int version) {
		Held held = held(segment);
		held.result().requireVersion(version);
		return held;
	}

	/**
	 * Take hold of the results of the event for a change of this one.
	 * @throws ConflictException where nothing of the segment may change any more
	 */
	Held held(SegmentId segment) {
		return heldIfBegun(segment).orElseThrow(() -> NotFoundException.of("segment-result", segment));
	}

	Optional<Held> heldIfBegun(SegmentId segment) {
		List<SegmentResult> all = lockedOfEvent(segment);
		this.stillOpen.require(segment);
		return all.stream()
			.filter((result) -> result.segment().equals(segment))
			.findFirst()
			.map((result) -> new Held(result, all));
	}

	boolean isComplete(SegmentId segment) {
		return this.run.performances(segment).stream().allMatch((one) -> one.status().isDone());
	}

	boolean hasStanding(SegmentId segment) {
		return this.standings.latest(segment).isPresent();
	}

	/**
	 * Tabulate once and write the next version of the segment and of its event. Where the
	 * result is posted, this version is posted anew by that.
	 * @throws ConflictException {@code cards-reopened} while cards of the segment are
	 * open again: what is public stays until they are closed
	 */
	void publish(Held held, ResultVersion.Cause cause, String note, Actor actor) {
		SegmentResult result = held.result();
		SegmentId segment = result.segment();
		List<PerformanceView> performances = this.run.performances(segment);
		requireNoneReopened(performances);
		StandingDrafts.Draft draft = this.drafts.now(segment, performances);
		VersionWriter.Publication publication = new VersionWriter.Publication(cause, note, actor);
		int number = result.nextStanding();
		this.writer.write(ResultVersion.Scope.SEGMENT, segment.value(), number,
				result.isOfficial() ? ResultVersion.ResultState.OFFICIAL : ResultVersion.ResultState.PROVISIONAL,
				publication, draft.segment());
		writeEvent(draft, held.all(), publication);
		if (result.isPosted()) {
			this.postings.keep(result, number, changed(cause, note), actor);
		}
	}

	/**
	 * What everybody reads beside a posting: what was corrected or opened again, but not
	 * why a team withdrew or a judge left.
	 */
	private static String changed(ResultVersion.Cause cause, String note) {
		return switch (cause) {
			case POSTED -> "";
			case CORRECTED, REOPENED -> cause.lead() + note;
			case STATUS -> "The state of a team changed.";
			case PANEL -> "The panel changed.";
			default -> "Cards were opened and closed again.";
		};
	}

	/**
	 * Put the event's standing together anew from the segments that take place; nothing
	 * where none of them has a standing yet.
	 */
	void publishEvent(EventView event, String note, Actor actor) {
		List<SegmentResult> all = lockedOfEvent(event);
		this.drafts.whole(event.held())
			.ifPresent((draft) -> writeEvent(draft, all,
					new VersionWriter.Publication(ResultVersion.Cause.CANCELLED, note, actor)));
	}

	/**
	 * Write the next version of an event alone, where none of its segments changed: a
	 * team left it, or came back, between two of them. Nothing is written before the
	 * first standing.
	 * @param shown tells whether the newest version says so already
	 * @throws ConflictException {@code cards-reopened}, as for {@link #publish}
	 */
	void publishEvent(EventId id, Predicate<Standing> shown, VersionWriter.Publication publication) {
		List<SegmentResult> all = lockedOfEvent(this.competitions.event(id));
		if (this.standings.latest(id).map(ResultVersion::standing).filter(shown.negate()).isPresent()) {
			SegmentId last = lastBegun(id);
			List<PerformanceView> performances = this.run.performances(last);
			requireNoneReopened(performances);
			writeEvent(this.drafts.now(last, performances), all, publication);
		}
	}

	private void writeEvent(StandingDrafts.Draft draft, List<SegmentResult> all,
			VersionWriter.Publication publication) {
		this.writer.write(ResultVersion.Scope.EVENT, draft.view().id().value(), draft.eventNumber() + 1,
				isOfficial(draft.view(), all) ? ResultVersion.ResultState.OFFICIAL
						: ResultVersion.ResultState.PROVISIONAL,
				publication, draft.event());
	}

	private static boolean isOfficial(EventView held, List<SegmentResult> all) {
		return held.segments()
			.stream()
			.allMatch((segment) -> all.stream()
				.anyMatch((result) -> result.segment().equals(segment.id()) && result.isOfficial()));
	}

	/** The last segment of an event that has a standing; there is one. */
	private SegmentId lastBegun(EventId id) {
		return this.competitions.event(id)
			.held()
			.segments()
			.stream()
			.map(SegmentView::id)
			.filter(this::hasStanding)
			.reduce((earlier, later) -> later)
			.orElseThrow();
	}

	private static void requireNoneReopened(List<PerformanceView> performances) {
		performances.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.REOPENED)
			.findFirst()
			.ifPresent((open) -> {
				throw new ConflictException("cards-reopened",
						Sentence.of("results.cards-reopened", open.startNumber()));
			});
	}

	private List<SegmentResult> lockedOfEvent(SegmentId segment) {
		return lockedOfEvent(this.competitions.eventOf(segment));
	}

	private List<SegmentResult> lockedOfEvent(EventView event) {
		return this.results.findLocked(event.segments().stream().map((each) -> each.id().value()).toList());
	}

	private static SegmentResult one(List<SegmentResult> all, SegmentId segment) {
		return all.stream()
			.filter((result) -> result.segment().equals(segment))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("segment-result", segment));
	}

	/**
	 * The result of a segment that is held.
	 *
	 * @param all those of all segments of its event, held too
	 */
	record Held(SegmentResult result, List<SegmentResult> all) {
	}

}
