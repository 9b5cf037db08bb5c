package rimebook.fees;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/** An event whose own fees are on the record stays. */
@Component
class FeesHangOnIt implements CancellationGuard {

	private final FeeTermsRepository terms;

	FeesHangOnIt(FeeTermsRepository terms) {
		this.terms = terms;
	}

	@Override
	public Optional<Sentence> againstRemoving(EventView event, List<SegmentView> segments) {
		boolean whole = segments.size() == event.segments().size();
		return (whole && this.terms.existsByEvent(event.id().value()))
				? Optional.of(Sentence.of("fees.event-has-fees", event.name())) : Optional.empty();
	}

}
