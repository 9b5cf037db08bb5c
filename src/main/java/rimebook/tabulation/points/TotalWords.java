package rimebook.tabulation.points;

import java.util.List;
import java.util.stream.Stream;

import rimebook.tabulation.Reason;
import rimebook.wording.Sentence;

/** The words of an event under points judging. */
record TotalWords(PointsEventStanding.PointsEventRow row) implements Reason.ReasonWords {

	@Override
	public Sentence own(Reason reason) {
		return Sentence.of(this.row.complete() ? "score.event.own" : "score.event.own-so-far",
				ScoreWords.words(this.row.total()), parts());
	}

	/** What was added up, where it was more than one segment. */
	private Sentence parts() {
		List<Sentence> parts = this.row.segments()
			.stream()
			.flatMap(Stream::ofNullable)
			.map((segment) -> ScoreWords.words(segment.total()))
			.toList();
		return (parts.size() < 2) ? Sentence.NONE : Sentence.of("score.event.parts",
				parts.stream().reduce((sum, next) -> Sentence.of("score.event.sum", sum, next)).orElseThrow());
	}

	@Override
	public Sentence rivals(Reason.Comparison comparison) {
		int theirs = comparison.theirs();
		return switch (comparison.criterion()) {
			case EVERY_SEGMENT ->
				Sentence.of((theirs == 1) ? "score.event.who-every-segment" : "score.event.who-not-every-segment");
			case TOTAL_POINTS -> ScoreWords.difference(comparison);
			case LAST_SEGMENT_POINTS -> ScoreWords.sameTotal("score.same-total.last-segment", comparison);
			case LAST_SEGMENT_PLACE -> Sentence.of("score.event.who-segment-place", theirs);
			case SEGMENT_REACHED -> Sentence.of("why.event.whose-segment", theirs);
			default -> Sentence.of("why.event.who-last-of-both", theirs);
		};
	}

}
