package rimebook.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.results.ResultVersion;
import rimebook.tabulation.SegmentKind;
import rimebook.wording.Sentence;

/**
 * The published marks of a segment with whose they are.
 *
 * @param judges in the order of the cards
 * @param lines what was judged, by aspects
 */
record MeasuredSegment(EventView event, SegmentView segment, ResultVersion version, List<ReviewedJudge> judges,
		Map<Aspect, List<MarkLine>> lines) {

	List<MarkLine> lines(Aspect aspect) {
		return this.lines.getOrDefault(aspect, List.of());
	}

	Tally tally(Aspect aspect, int judge) {
		return Tally.of(lines(aspect), judge, aspect.limit());
	}

	SegmentReview view() {
		return new SegmentReview(this.version.standing().segment(), this.version.number(), isOfficial(), skated(),
				this.lines.keySet().stream().map(this::view).toList());
	}

	boolean isOfficial() {
		return this.version.state() == ResultVersion.ResultState.OFFICIAL;
	}

	private AspectReview view(Aspect aspect) {
		List<JudgeLine> rows = IntStream.range(0, this.judges.size()).mapToObj((judge) -> row(aspect, judge)).toList();
		List<OutlyingMark> outlying = IntStream.range(0, this.judges.size())
			.boxed()
			.flatMap((judge) -> lines(aspect).stream()
				.flatMap((line) -> line.of(judge).stream())
				.filter((compared) -> compared.isOutlying(aspect.limit()))
				.map((compared) -> OutlyingMark.of(aspect, this.judges.get(judge), compared)))
			.toList();
		return new AspectReview(aspect, name(aspect), rows, notes(rows), outlying);
	}

	private JudgeLine row(Aspect aspect, int judge) {
		ReviewedJudge who = this.judges.get(judge);
		boolean named = !who.name().isEmpty();
		return JudgeLine.of(named ? Sentence.said(who.name()) : who.seat(), named ? List.of(who.seat()) : List.of(),
				tally(aspect, judge));
	}

	/** The marks go by what they are given for in that segment. */
	private Sentence name(Aspect aspect) {
		return switch (aspect) {
			case FIRST_MARK -> Sentence.of((this.segment.kind() == SegmentKind.SHORT)
					? "review.aspect.required-elements" : "review.aspect.technical-merit");
			case SECOND_MARK -> Sentence.of("review.aspect.presentation");
			case PLACE, GRADE, COMPONENT -> aspect.spoken();
		};
	}

	private int skated() {
		return (int) this.lines.values()
			.stream()
			.flatMap(Collection::stream)
			.map((line) -> line.team().entry())
			.distinct()
			.count();
	}

	private List<Sentence> notes(List<JudgeLine> rows) {
		List<Sentence> notes = new ArrayList<>();
		if (rows.size() <= 2) {
			notes.add(Sentence.of((rows.size() == 2) ? "review.note.two-judges" : "review.note.one-judge"));
		}
		int pairs = rows.stream().mapToInt((row) -> row.pairs().all()).max().orElse(0);
		if (pairs > 0) {
			int weight = (int) Math.round(2.0 * 100 / pairs);
			notes.add(Sentence.of("review.note.pair-weight", skated(), pairs, Sentence.of("figure.points", weight)));
		}
		return notes;
	}

}
