package rimebook.review;

import java.util.List;

import rimebook.wording.Sentence;

/**
 * How a panel agrees in one aspect.
 *
 * @param name what is compared, as the event calls it
 * @param judges in panel order; over several segments in the order in which they were met
 * @param notes what is to be known of these figures in particular
 * @param outlying the marks that are pointed out; empty over several segments, where they
 * are only counted
 */
public record AspectReview(Aspect aspect, Sentence name, List<JudgeLine> judges, List<Sentence> notes,
		List<OutlyingMark> outlying) {

	public AspectReview {
		judges = List.copyOf(judges);
		notes = List.copyOf(notes);
		outlying = List.copyOf(outlying);
	}

	/** How far beside all others a mark is pointed out, in words: "0.3". */
	public Sentence limit() {
		return Sentence.of("figure.plain", this.aspect.limit());
	}

}
