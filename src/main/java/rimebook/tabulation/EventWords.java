package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;

import rimebook.wording.Sentence;

/** Words of the combination of segments. */
record EventWords(EventStanding.EventRow row) implements Reason.ReasonWords {

	@Override
	public Sentence own(Reason reason) {
		return Sentence.of(this.row.complete() ? "why.event.own" : "why.event.own-so-far",
				Phrases.decimal(this.row.total()), segments());
	}

	/** One after the other, whatever their number: "1st in …, 2nd in …". */
	private Sentence segments() {
		List<Sentence> segments = new ArrayList<>();
		for (int i = 0; i < this.row.places().size(); i++) {
			segments.add(segment(i));
		}
		return segments.stream()
			.reduce((before, next) -> Sentence.of("figure.series.comma", before, next))
			.orElse(Sentence.NONE);
	}

	private Sentence segment(int index) {
		Integer place = this.row.places().get(index);
		Integer factored = this.row.factored().get(index);
		return (place == null || factored == null) ? Sentence.of("why.event.no-place", index + 1)
				: Sentence.of("why.event.segment", place, index + 1, Phrases.decimal(factored));
	}

	@Override
	public Sentence rivals(Reason.Comparison comparison) {
		int theirs = comparison.theirs();
		return switch (comparison.criterion()) {
			case EVERY_SEGMENT ->
				Sentence.of((theirs == 1) ? "why.event.with-every-segment" : "why.event.without-every-segment");
			case FACTORED_TOTAL -> Sentence.of("why.event.with-total", Phrases.decimal(theirs));
			case LAST_SEGMENT_PLACE -> Sentence.of("why.event.with-last-segment", theirs);
			case SEGMENT_REACHED -> Sentence.of("why.event.whose-segment", theirs);
			case PLACE_IN_SEGMENT_REACHED -> Sentence.of("why.event.who-last-of-both", theirs);
			case SEGMENTS_SKATED -> Sentence.of("why.event.with-segments", theirs, Phrases.number(theirs));
			default -> Sentence.of("why.event.with-total-so-far", Phrases.decimal(theirs));
		};
	}

}
