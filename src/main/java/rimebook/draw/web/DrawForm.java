package rimebook.draw.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** What the referee types to draw a segment. */
record DrawForm(@Nullable DrawMethod method, @Nullable String seed, @Nullable Integer groupMaximum,
		@Nullable String reason, @Nullable Integer seen) {

	/** The form before anything is typed. */
	static DrawForm of(StartingOrderDraw.Offer offer) {
		return new DrawForm(offer.methods().get(0), "", offer.groupMaximum(), "", null);
	}

	StartingOrderDraw.Order order(SegmentId segment) {
		if (this.method == null) {
			throw new RuleViolationException("field-missing", "method", Sentence.of("draw.method-missing"));
		}
		return new StartingOrderDraw.Order(segment, this.method, Required.optional("seed", this.seed, 200),
				(this.groupMaximum != null) ? this.groupMaximum : 0, Required.optional("reason", this.reason, 500),
				this.seen);
	}

}
