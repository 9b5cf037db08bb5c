package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.StillOpen;
import rimebook.marks.ClosedCards;
import rimebook.marks.ClosedPerformance;
import rimebook.marks.CountedPanel;
import rimebook.entries.EntryId;
import rimebook.marks.PerformanceStatus;
import rimebook.marks.PerformanceView;
import rimebook.marks.SegmentRun;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;

/**
 * Publishes the next version of a segment and of its event. All segments of the event are
 * locked first, always in one order, so that versions are numbered without gaps.
 */
@Component
class StandingUpdate {

	private final SegmentResultRepository results;

	private final Standings standings;

	private final Competitions competitions;

	private final ClosedCards cards;

	private final SegmentRun run;

	private final SegmentStandings segmentStandings;

	private final EventStandings eventStandings;

	private final Outlooks outlooks;

	private final VersionWriter writer;

	private final PostingBook postings;

	private final StillOpen stillOpen;

	StandingUpdate(SegmentResultRepository results, Standings standings, Competitions competitions, ClosedCards cards,
			SegmentRun run, SegmentStandings segmentStandings, EventStandings eventStandings, Outlooks outlooks,
			VersionWriter writer, PostingBook postings, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.results = results;
		this.standings = standings;
		this.competitions = competitions;
		this.cards = cards;
		this.run = run;
		this.segmentStandings = segmentStandings;
		this.eventStandings = eventStandings;
		this.outlooks = outlooks;
		this.writer = writer;
		this.postings = postings;
	}

	/** Begin the result of a segment that was just opened. */
	void begin(SegmentId segment) {
		this.results.save(new SegmentResult(segment));
	}

	SegmentResult locked(SegmentId segment, int version) {
		SegmentResult result = locked(segment);
		result.requireVersion(version);
		return result;
	}

	/**
	 * Take hold of the results of the event for a change of this one.
	 * @throws ConflictException where nothing of the segment may change any more
	 */
	SegmentResult locked(SegmentId segment) {
		return lockedIfBegun(segment).orElseThrow(() -> NotFoundException.of("segment-result", segment));
	}

	Optional<SegmentResult> lockedIfBegun(SegmentId segment) {
		List<SegmentResult> all = lockedOfEvent(segment);
		this.stillOpen.require(segment);
		return all.stream().filter((result) -> result.segment().equals(segment)).findFirst();
	}

	boolean isComplete(SegmentId segment) {
		return waiting(segment).isEmpty();
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
	void publish(SegmentId segment, Cause cause, String note, Actor actor) {
		requireNoneReopened(segment);
		List<SegmentResult> all = lockedOfEvent(segment);
		SegmentResult result = one(all, segment);
		Draft draft = draft(segment, this.cards.ofSegment(segment));
		VersionWriter.Publication publication = new VersionWriter.Publication(cause, note, actor);
		int number = result.nextStanding();
		this.writer.write(Scope.SEGMENT, segment.value(), number,
				result.isOfficial() ? ResultState.OFFICIAL : ResultState.PROVISIONAL, publication, draft.segment());
		writeEvent(draft, all, publication);
		if (result.isPosted()) {
			this.postings.keep(result, number, changed(cause, note), actor);
		}
	}

	/**
	 * What everybody reads beside a posting: what was corrected or opened again, but not
	 * why a team withdrew or a judge left.
	 */
	private static String changed(Cause cause, String note) {
		return switch (cause) {
			case POSTED -> "";
			case CORRECTED, REOPENED -> note;
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
		EventView held = event.held();
		List<SegmentResult> all = this.results
			.findLocked(event.segments().stream().map((each) -> each.id().value()).toList());
		List<@Nullable Standing> segments = held.segments().stream().map(this::latest).toList();
		if (segments.stream().anyMatch(Objects::nonNull)) {
			Optional<ResultVersion> before = this.standings.latest(event.id());
			Standing standing = before.map(ResultVersion::standing).orElse(null);
			Standing whole = this.eventStandings.compose(this.competitions.competition(event.competition()), held,
					segments, standing);
			writeEvent(new Draft(held, whole, whole, null, standing, before.map(ResultVersion::number).orElse(0)), all,
					new VersionWriter.Publication(Cause.CANCELLED, note, actor));
		}
	}

	private @Nullable Standing latest(SegmentView segment) {
		return this.standings.latest(segment.id()).map(ResultVersion::standing).orElse(null);
	}

	/** Nothing is published of a cancelled segment, but a preview may look at one. */
	private EventView counted(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		return event.segment(id).isCancelled() ? event : event.held();
	}

	private void writeEvent(Draft draft, List<SegmentResult> all, VersionWriter.Publication publication) {
		this.writer.write(Scope.EVENT, draft.view().id().value(), draft.eventNumber() + 1,
				isOfficial(draft.view(), all) ? ResultState.OFFICIAL : ResultState.PROVISIONAL, publication,
				draft.event());
	}

	private static boolean isOfficial(EventView held, List<SegmentResult> all) {
		return held.segments()
			.stream()
			.allMatch((segment) -> all.stream()
				.anyMatch((result) -> result.segment().equals(segment.id()) && result.isOfficial()));
	}

	/** Compose both standings as these cards would make them, writing nothing. */
	Draft draft(SegmentId id, List<ClosedPerformance> closed) {
		EventView event = counted(id);
		CompetitionView competition = this.competitions.competition(event.competition());
		Standing before = this.standings.latest(id).map(ResultVersion::standing).orElse(null);
		List<EntryId> waiting = waiting(id);
		CountedPanel panel = this.cards.panel(id);
		EventView counted = event.countedBy(panel.judges().size());
		Standing segment = this.segmentStandings
			.compose(competition, counted, event.segment(id), closed, closed.size() + waiting.size(), before)
			.with(panel);
		Optional<ResultVersion> eventBefore = this.standings.latest(event.id());
		Standing wholeBefore = eventBefore.map(ResultVersion::standing).orElse(null);
		List<@Nullable Standing> segments = segments(event, id, segment);
		Standing whole = this.eventStandings.compose(competition, event, segments, wholeBefore);
		Outlook outlook = this.outlooks.of(counted, event.segment(id), closed, waiting, before, segments);
		return new Draft(event, segment.with(outlook), whole.with(outlook), before, wholeBefore,
				eventBefore.map(ResultVersion::number).orElse(0));
	}

	private List<@Nullable Standing> segments(EventView event, SegmentId changed, Standing standing) {
		List<@Nullable Standing> all = new ArrayList<>();
		for (SegmentView segment : event.segments()) {
			all.add(segment.id().equals(changed) ? standing : latest(segment));
		}
		return all;
	}

	private void requireNoneReopened(SegmentId segment) {
		this.run.performances(segment)
			.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.REOPENED)
			.findFirst()
			.ifPresent((open) -> {
				throw new ConflictException("cards-reopened", "The cards of start number " + open.startNumber()
						+ " are open again. Close them first, so that nothing is published while they may change.");
			});
	}

	private List<EntryId> waiting(SegmentId segment) {
		return this.run.performances(segment)
			.stream()
			.filter((performance) -> !performance.status().isDone())
			.map(PerformanceView::entry)
			.toList();
	}

	private List<SegmentResult> lockedOfEvent(SegmentId segment) {
		return this.results.findLocked(
				this.competitions.eventOf(segment).segments().stream().map((each) -> each.id().value()).toList());
	}

	private static SegmentResult one(List<SegmentResult> all, SegmentId segment) {
		return all.stream()
			.filter((result) -> result.segment().equals(segment))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("segment-result", segment));
	}

	/**
	 * Both standings, with those they follow.
	 *
	 * @param eventNumber the number of the event's newest version, 0 for none
	 */
	record Draft(EventView view, Standing segment, Standing event, @Nullable Standing segmentBefore,
			@Nullable Standing eventBefore, int eventNumber) {
	}

}
