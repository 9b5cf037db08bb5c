package rimebook.results;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.draw.StandingBefore;
import rimebook.entries.EntryId;
import rimebook.published.Standing;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.EntryStatus;
import rimebook.wording.Sentence;

/** Tells the draw of a later segment how the teams stand. */
@Component
class StandingBeforeSegment implements StandingBefore {

	private final Standings standings;

	private final StandingDrafts drafts;

	private final Competitions competitions;

	StandingBeforeSegment(Standings standings, StandingDrafts drafts, Competitions competitions) {
		this.drafts = drafts;
		this.standings = standings;
		this.competitions = competitions;
	}

	@Override
	// The page of the draw shows the refusal and goes on with its transaction.
	@Transactional(readOnly = true, noRollbackFor = RuleViolationException.class)
	public List<StandingBefore.Ranked> standingBefore(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment).held();
		Standing standing = latest(event, segment).filter((latest) -> isReadyFor(event, segment, latest))
			.orElseThrow(() -> new RuleViolationException("standing-incomplete",
					Sentence.of("results.standing-incomplete")));
		return standing.rows()
			.stream()
			.filter((row) -> row.has(EntryStatus.SKATED))
			.map((row) -> new StandingBefore.Ranked(EntryId.of(row.entry()), row.place()))
			.toList();
	}

	/** Of a segment that has begun nothing counts for who begins it. */
	private Optional<Standing> latest(EventView event, SegmentId segment) {
		return this.standings.latest(segment).isPresent() ? this.drafts.before(event, segment)
				: this.standings.latest(event.id()).map(ResultVersion::standing);
	}

	private boolean isReadyFor(EventView event, SegmentId segment, Standing latest) {
		int index = event.segments().stream().map((each) -> each.id()).toList().indexOf(segment);
		return index > 0 && latest.isComplete()
				&& this.standings.result(event.segments().get(index - 1).id()).isPresent();
	}

}
