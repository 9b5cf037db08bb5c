package rimebook.results;

import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.marks.ClosedCards;
import rimebook.marks.ClosedPerformance;
import rimebook.marks.PerformanceId;
import rimebook.marks.PointsLine;
import rimebook.marks.SheetLine;
import rimebook.panels.SeatId;
import rimebook.tabulation.CardMarks;

/** Shows what a correction would do to every place, writing nothing. */
@Service
public class ResultPreview {

	private final StandingUpdate update;

	private final ClosedCards cards;

	ResultPreview(StandingUpdate update, ClosedCards cards) {
		this.update = update;
		this.cards = cards;
	}

	/** Return every team's place now and as it would be with these marks on one card. */
	@Transactional(readOnly = true)
	public ResultEffect ifCorrected(SegmentId segment, PerformanceId performance, SeatId seat, CardMarks marks) {
		return effect(segment, this.cards.ofSegmentIf(segment, performance, seat, marks));
	}

	/**
	 * The same in points judging, with another value in one line of one card.
	 * @param value the grade, or the mark in hundredths
	 */
	@Transactional(readOnly = true)
	public ResultEffect ifCorrected(SegmentId segment, PerformanceId performance, SeatId seat, PointsLine line,
			int value) {
		return effect(segment, this.cards.ofSegmentIf(segment, performance, seat, line, value));
	}

	/**
	 * The same with another element or deduction in one place.
	 * @param corrected what would stand there, as in {@link SheetLine}
	 */
	@Transactional(readOnly = true)
	public ResultEffect ifCorrected(SegmentId segment, PerformanceId performance, SheetLine line, String corrected) {
		return effect(segment, this.cards.ofSegmentIf(segment, performance, line, corrected));
	}

	private ResultEffect effect(SegmentId segment, List<ClosedPerformance> closed) {
		StandingUpdate.Draft draft = this.update.draft(segment, closed);
		return new ResultEffect(moves(draft.segmentBefore(), draft.segment()),
				moves(draft.eventBefore(), draft.event()));
	}

	private static List<ResultEffect.Move> moves(@Nullable Standing before, Standing after) {
		Map<String, Integer> places = PreviousPlaces.of(before);
		return after.rows()
			.stream()
			.map((row) -> new ResultEffect.Move(row.team(), places.get(row.entry()), row.place()))
			.toList();
	}

}
