package rimebook.marks;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryStatus;

/** What the tabulation of a segment starts from: closed cards only, nothing else. */
@Service
public class ClosedCards {

	private final PerformanceRepository performances;

	private final PanelCards cards;

	private final PointsSheets sheets;

	private final CountingPanels panels;

	private final Competitions competitions;

	ClosedCards(PerformanceRepository performances, PanelCards cards, PointsSheets sheets, CountingPanels panels,
			Competitions competitions) {
		this.performances = performances;
		this.cards = cards;
		this.sheets = sheets;
		this.panels = panels;
		this.competitions = competitions;
	}

	/** List the performances of a segment that are done, by starting number. */
	@Transactional(readOnly = true)
	public List<ClosedPerformance> ofSegment(SegmentId segment) {
		return ofSegment(segment, Performance::status);
	}

	/**
	 * List them as they would be if one performance had another status.
	 * @param performance whose
	 * @param supposed how it would have come through
	 */
	@Transactional(readOnly = true)
	public List<ClosedPerformance> ofSegmentIf(SegmentId segment, PerformanceId performance,
			PerformanceStatus supposed) {
		return ofSegment(segment, (one) -> one.id().equals(performance) ? supposed : one.status());
	}

	private List<ClosedPerformance> ofSegment(SegmentId segment, Function<Performance, PerformanceStatus> status) {
		return this.competitions.eventOf(segment).isJudgedByPoints() ? byPoints(segment, status, (reading) -> {
		}) : ofSegment(segment, status, (performance, seat, marks) -> marks);
	}

	/** Tell whose cards count in a segment. */
	@Transactional(readOnly = true)
	public CountedPanel panel(SegmentId segment) {
		return this.panels.counted(segment);
	}

	/** The seats whose cards count in a segment, in the order of the judges' numbers. */
	@Transactional(readOnly = true)
	public List<SeatView> seats(SegmentId segment) {
		return this.panels.of(segment).seats();
	}

	/**
	 * List them as they would be if one card held other marks.
	 * @param performance whose card
	 * @param seat which seat's card
	 * @param marks what it would hold
	 */
	@Transactional(readOnly = true)
	public List<ClosedPerformance> ofSegmentIf(SegmentId segment, PerformanceId performance, SeatId seat,
			CardMarks marks) {
		return ofSegment(segment,
				(whose, where, counted) -> whose.equals(performance) && where.equals(seat) ? marks : counted);
	}

	private List<ClosedPerformance> ofSegment(SegmentId segment, Reading reading) {
		return ofSegment(segment, Performance::status, reading);
	}

	private List<ClosedPerformance> ofSegment(SegmentId segment, Function<Performance, PerformanceStatus> status,
			Reading reading) {
		List<Performance> done = done(segment, status);
		List<SeatView> seats = this.cards.seats(segment);
		Map<UUID, Map<SeatId, CardSubmission>> newest = this.cards
			.newestOf(done.stream().map((performance) -> performance.id().value()).toList());
		return done.stream()
			.map((performance) -> closed(performance, status.apply(performance), seats,
					newest.getOrDefault(performance.id().value(), Map.of()), reading))
			.toList();
	}

	/**
	 * List them as they would be if one line of one card held another value, in points
	 * judging.
	 * @param performance whose card
	 * @param seat which seat's card
	 * @param line which line of it
	 * @param value the grade, or the mark in hundredths
	 */
	@Transactional(readOnly = true)
	public List<ClosedPerformance> ofSegmentIf(SegmentId segment, PerformanceId performance, SeatId seat,
			PointsLine line, int value) {
		return byPoints(segment, (reading) -> reading.suppose(performance, seat, line, value));
	}

	/**
	 * List them as they would be if another element or deduction stood in one place.
	 * @param performance whose
	 * @param line which place
	 * @param corrected what would stand there, as in {@link SheetLine}
	 */
	@Transactional(readOnly = true)
	public List<ClosedPerformance> ofSegmentIf(SegmentId segment, PerformanceId performance, SheetLine line,
			String corrected) {
		return byPoints(segment, (reading) -> reading.suppose(performance, line, corrected));
	}

	private List<ClosedPerformance> byPoints(SegmentId segment, Consumer<PointsSheets.Reading> supposing) {
		return byPoints(segment, Performance::status, supposing);
	}

	private List<ClosedPerformance> byPoints(SegmentId segment, Function<Performance, PerformanceStatus> status,
			Consumer<PointsSheets.Reading> supposing) {
		List<Performance> done = done(segment, status);
		PointsSheets.Reading reading = this.sheets.of(segment, done);
		supposing.accept(reading);
		return done.stream()
			.map((performance) -> closed(performance, status.apply(performance), List.of(),
					hasMarks(performance, status.apply(performance)) ? reading.sheet(performance.id()) : null))
			.toList();
	}

	private List<Performance> done(SegmentId segment, Function<Performance, PerformanceStatus> status) {
		return this.performances.findBySegmentOrderByStartNumber(segment.value())
			.stream()
			.filter((performance) -> status.apply(performance).isDone())
			.toList();
	}

	/**
	 * What was closed stays with the sheet of a team that was disqualified afterwards.
	 */
	private static boolean hasMarks(Performance performance, PerformanceStatus status) {
		return performance.hasClosedCards()
				&& (status == PerformanceStatus.CLOSED || status == PerformanceStatus.DISQUALIFIED);
	}

	private static ClosedPerformance closed(Performance performance, PerformanceStatus status, List<CardMarks> cards,
			@Nullable PointsSheet sheet) {
		return new ClosedPerformance(performance.id(), performance.entry(), performance.startNumber(), status(status),
				cards, sheet);
	}

	private static ClosedPerformance closed(Performance performance, PerformanceStatus status, List<SeatView> seats,
			Map<SeatId, CardSubmission> cards, Reading reading) {
		List<CardMarks> marks = hasMarks(performance, status) ? seats.stream()
			.map((seat) -> reading.of(performance.id(), seat.id(), cards.get(seat.id()).marks()))
			.toList() : List.of();
		return closed(performance, status, marks, null);
	}

	private static EntryStatus status(PerformanceStatus status) {
		return switch (status) {
			case CLOSED -> EntryStatus.SKATED;
			case WITHDRAWN -> EntryStatus.WITHDRAWN;
			case NOT_FINISHED -> EntryStatus.NOT_FINISHED;
			case DISQUALIFIED -> EntryStatus.DISQUALIFIED;
			case WAITING, ON_ICE, REOPENED, SET_ASIDE -> throw new IllegalStateException("Not done: " + status);
		};
	}

	/** How a card is read: as it is, or as it would be after a correction. */
	private interface Reading {

		CardMarks of(PerformanceId performance, SeatId seat, CardMarks counted);

	}

}
