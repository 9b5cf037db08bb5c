package rimebook.results;

import java.util.List;
import java.util.function.Predicate;

import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.performances.CountingPanel;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.published.Standing;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** Publishes the next version of a segment and of its event, whose results are held. */
@Component
class StandingUpdate {

	private final HeldResult.Source results;

	private final Standings standings;

	private final SegmentRun run;

	private final StandingDrafts drafts;

	private final VersionWriter writer;

	private final PostingBook postings;

	private final SignatureBook signatures;

	StandingUpdate(HeldResult.Source results, Standings standings, SegmentRun run, StandingDrafts drafts,
			VersionWriter writer, PostingBook postings, SignatureBook signatures) {
		this.results = results;
		this.standings = standings;
		this.run = run;
		this.drafts = drafts;
		this.writer = writer;
		this.postings = postings;
		this.signatures = signatures;
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
	void publish(HeldResult held, ResultVersion.Cause cause, Sentence note, Actor actor) {
		SegmentId segment = held.result().segment();
		publish(held, this.drafts.now(segment, whole(segment)), new VersionWriter.Publication(cause, note, actor));
	}

	/** The same for whoever has read whose cards count. */
	void publish(HeldResult held, CountingPanel panel, VersionWriter.Publication publication) {
		SegmentId segment = held.result().segment();
		publish(held, this.drafts.now(segment, whole(segment), panel), publication);
	}

	private List<PerformanceView> whole(SegmentId segment) {
		List<PerformanceView> performances = this.run.performances(segment);
		requireNoneReopened(performances);
		return performances;
	}

	private void publish(HeldResult held, StandingDrafts.Draft draft, VersionWriter.Publication publication) {
		SegmentResult result = held.result();
		int number = result.nextStanding();
		this.writer.write(new ResultVersion.Key(ResultVersion.Scope.SEGMENT, result.segment().value(), number),
				result.isOfficial() ? ResultVersion.ResultState.OFFICIAL : ResultVersion.ResultState.PROVISIONAL,
				publication, draft.segment());
		writeEvent(draft, held.all(), publication);
		if (result.isOfficial()) {
			this.signatures.keep(result, number);
		}
		if (result.isPosted()) {
			this.postings.keep(result, number,
					changed(publication.reason().cause(), publication.reason().said().english()), publication.actor());
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
	void publishEvent(EventView event, Sentence note, Actor actor) {
		List<SegmentResult> all = this.results.ofEvent(event);
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
		List<SegmentResult> all = this.results.ofEvent(id);
		if (this.standings.latest(id).map(ResultVersion::standing).filter(shown.negate()).isPresent()) {
			SegmentId last = this.drafts.lastBegun(id);
			writeEvent(this.drafts.now(last, whole(last)), all, publication);
		}
	}

	private void writeEvent(StandingDrafts.Draft draft, List<SegmentResult> all,
			VersionWriter.Publication publication) {
		this.writer.write(
				new ResultVersion.Key(ResultVersion.Scope.EVENT, draft.view().id().value(), draft.eventNumber() + 1),
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

	private static void requireNoneReopened(List<PerformanceView> performances) {
		performances.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.REOPENED)
			.findFirst()
			.ifPresent((open) -> {
				throw new ConflictException("cards-reopened",
						Sentence.of("results.cards-reopened", open.startNumber()));
			});
	}

}
