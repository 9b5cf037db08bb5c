package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.marks.ClosedCards;
import rimebook.marks.ClosedPerformance;
import rimebook.marks.PerformanceId;
import rimebook.marks.PerformanceStatus;
import rimebook.marks.PerformanceView;
import rimebook.marks.PointsLine;
import rimebook.marks.SheetLine;
import rimebook.marks.StatusCorrection;
import rimebook.marks.SupposedCard;
import rimebook.marks.SupposedLine;
import rimebook.marks.SupposedPlace;
import rimebook.panels.SeatId;
import rimebook.tabulation.CardMarks;

/** Shows what a correction would do to every place, writing nothing. */
@Service
public class ResultPreview {

	private final StandingDrafts drafts;

	private final EventFields fields;

	private final ClosedCards cards;

	private final StatusCorrection statuses;

	ResultPreview(StandingDrafts drafts, EventFields fields, ClosedCards cards, StatusCorrection statuses) {
		this.drafts = drafts;
		this.fields = fields;
		this.cards = cards;
		this.statuses = statuses;
	}

	/** Return every team's place now and as it would be with these marks on one card. */
	@Transactional(readOnly = true)
	public ResultEffect ifCorrected(SegmentId segment, PerformanceId performance, SeatId seat, CardMarks marks) {
		return effect(segment, this.cards.ofSegmentIf(segment, new SupposedCard(performance, seat, marks)));
	}

	/**
	 * The same in points judging, with another value in one line of one card.
	 * @param value the grade, or the mark in hundredths
	 */
	@Transactional(readOnly = true)
	public ResultEffect ifCorrected(SegmentId segment, PerformanceId performance, SeatId seat, PointsLine line,
			int value) {
		return effect(segment, this.cards.ofSegmentIf(segment, new SupposedLine(performance, seat, line, value)));
	}

	/**
	 * The same with another element or deduction in one place.
	 * @param corrected what would stand there, as in {@link SheetLine}
	 */
	@Transactional(readOnly = true)
	public ResultEffect ifCorrected(SegmentId segment, PerformanceId performance, SheetLine line, String corrected) {
		return effect(segment, this.cards.ofSegmentIf(segment, new SupposedPlace(performance, line, corrected)));
	}

	/**
	 * The same if a performance had come through otherwise.
	 * @param supposed how; a team that would have withdrawn has left the event, one that
	 * would not takes part
	 */
	@Transactional(readOnly = true)
	public ResultEffect ifStatus(PerformanceView performance, PerformanceStatus supposed) {
		List<EntryId> toSkate = new ArrayList<>(this.fields.toSkate(performance.segment()));
		toSkate.remove(performance.entry());
		if (!supposed.isDone()) {
			toSkate.add(performance.entry());
		}
		Supposition supposition = new Supposition(performance.entry().toString(),
				supposed == PerformanceStatus.WITHDRAWN, this.statuses.following(performance.id()));
		return effect(this.drafts.of(performance.segment(),
				this.cards.ofSegmentIf(performance.segment(), performance.id(), supposed), toSkate, supposition));
	}

	private ResultEffect effect(SegmentId segment, List<ClosedPerformance> closed) {
		return effect(this.drafts.of(segment, closed));
	}

	private static ResultEffect effect(StandingDrafts.Draft draft) {
		return new ResultEffect(moves(draft.segmentBefore(), draft.segment()),
				moves(draft.eventBefore(), draft.event()));
	}

	private static List<ResultEffect.Move> moves(@Nullable Standing before, Standing after) {
		Map<String, Integer> places = PreviousPlaces.of(before);
		Stream<ResultEffect.Move> there = after.rows()
			.stream()
			.map((row) -> new ResultEffect.Move(row.team(), places.get(row.entry()), row.place()));
		return Stream.concat(there, gone(before, after)).toList();
	}

	/** Teams that would be in no row any more, since they would be still to skate. */
	private static Stream<ResultEffect.Move> gone(@Nullable Standing before, Standing after) {
		Set<String> left = after.rows().stream().map(Standing.Row::entry).collect(Collectors.toSet());
		return (before == null) ? Stream.empty()
				: before.rows()
					.stream()
					.filter((row) -> !left.contains(row.entry()))
					.map((row) -> new ResultEffect.Move(row.team(), row.place(), null));
	}

}
