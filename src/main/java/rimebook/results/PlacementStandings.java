package rimebook.results;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.entries.EntryId;
import rimebook.published.Standing;
import rimebook.wording.Sentence;

/** Standings of ordinals and factored places. */
@Component
class PlacementStandings implements MethodStandings {

	private final SegmentComposer segments;

	private final EventComposer events;

	private final LookAhead outlooks;

	PlacementStandings(SegmentComposer segments, EventComposer events, LookAhead outlooks) {
		this.segments = segments;
		this.events = events;
		this.outlooks = outlooks;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPlacement();
	}

	@Override
	public Sentence ruleSet(EventView event) {
		return RuleSetWords.ofEvent(event.rules(event.segments().get(0).kind()), event);
	}

	@Override
	public Standing ofSegment(SegmentFacts facts) {
		return this.segments.compose(facts);
	}

	@Override
	public Standing ofEvent(EventFacts facts) {
		return this.events.compose(facts);
	}

	@Override
	public Standing.Outlook outlook(SegmentFacts facts, List<EntryId> waiting, EventFacts whole) {
		return this.outlooks.of(facts, waiting, whole);
	}

}
