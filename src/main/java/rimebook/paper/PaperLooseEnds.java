package rimebook.paper;

import java.util.Optional;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.performances.LooseEnds;
import rimebook.wording.Sentence;

/** What was keyed in from paper and waits. */
@Component
@Order(1)
class PaperLooseEnds implements LooseEnds {

	private final PaperKeying keying;

	PaperLooseEnds(PaperKeying keying) {
		this.keying = keying;
	}

	@Override
	public Optional<LooseEnds.LooseEnd> of(SegmentId segment) {
		return Optional
			.of(new LooseEnds.LooseEnd("keyings", Sentence.of("paper.nothing-waits"), this.keying.unsettled(segment)));
	}

}
