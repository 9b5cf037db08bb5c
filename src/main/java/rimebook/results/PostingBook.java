package rimebook.results;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.shared.Acts;

/** Keeps every posting of a result with the end of its time for protests. */
@Component
class PostingBook {

	private final PostingRepository postings;

	private final ProtestTimes times;

	private final Acts acts;

	PostingBook(PostingRepository postings, ProtestTimes times, Acts acts) {
		this.acts = acts;
		this.postings = postings;
		this.times = times;
	}

	/**
	 * Note that a version was posted.
	 * @param changed what had changed since the posting before; empty for the first
	 */
	void keep(SegmentResult result, int number, String changed, Actor actor) {
		Instant now = this.acts.now().truncatedTo(ChronoUnit.MILLIS);
		result.postedAt(now, actor.name());
		this.postings.save(new PostingRow(this.acts.nextId(),
				new SegmentResultView.Posting(result.segment(), number, new SegmentResultView.Posted(now, actor.name()),
						changed, this.times.conductUntil(now), this.times.calculationUntil(now))));
	}

}
