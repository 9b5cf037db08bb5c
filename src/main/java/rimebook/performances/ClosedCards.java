package rimebook.performances;

import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.panels.SeatPlace;
import rimebook.panels.SeatView;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryStatus;
import rimebook.wording.Sentence;

/** What the tabulation of a segment starts from: closed cards only, nothing else. */
@Service
public class ClosedCards {

	private final PerformanceRegister performances;

	private final CardBooks books;

	private final CountingPanels panels;

	ClosedCards(PerformanceRegister performances, CardBooks books, CountingPanels panels) {
		this.performances = performances;
		this.books = books;
		this.panels = panels;
	}

	/** List the performances of a segment that are done, by starting number. */
	@Transactional(readOnly = true)
	public List<ClosedPerformance> ofSegment(SegmentId segment) {
		return ofSegment(segment, PerformanceView::status, null).performances();
	}

	/**
	 * All that a segment is tabulated from.
	 * @param performances of the segment
	 */
	@Transactional(readOnly = true)
	public ClosedSegment of(SegmentId segment, List<PerformanceView> performances) {
		return of(segment, performances, this.panels.of(segment));
	}

	/** The same for whoever has read whose cards count. */
	@Transactional(readOnly = true)
	public ClosedSegment of(SegmentId segment, List<PerformanceView> performances, CountingPanel panel) {
		return of(new Field(segment, performances, panel), PerformanceView::status, null);
	}

	/**
	 * The same as it would be if one performance had another status.
	 * @param performance whose
	 * @param supposed how it would have come through
	 */
	@Transactional(readOnly = true)
	public ClosedSegment ofSegmentIf(SegmentId segment, PerformanceId performance, PerformanceStatus supposed) {
		return ofSegment(segment, (one) -> one.id().equals(performance) ? supposed : one.status(), null);
	}

	/** The same as it would be if something else stood on one card or list. */
	@Transactional(readOnly = true)
	public ClosedSegment ofSegmentIf(SegmentId segment, Amendment.SupposedChange<?> supposed) {
		return ofSegment(segment, PerformanceView::status, supposed);
	}

	/** The seats whose cards count in a segment, in the order of the judges' numbers. */
	@Transactional(readOnly = true)
	public List<SeatView> seats(SegmentId segment) {
		return this.panels.of(segment).seats();
	}

	private ClosedSegment ofSegment(SegmentId segment, Function<PerformanceView, PerformanceStatus> status,
			Amendment.@Nullable SupposedChange<?> supposed) {
		return of(new Field(segment, this.performances.ofSegment(segment), this.panels.of(segment)), status, supposed);
	}

	private ClosedSegment of(Field field, Function<PerformanceView, PerformanceStatus> status,
			Amendment.@Nullable SupposedChange<?> supposed) {
		List<PerformanceView> done = field.performances()
			.stream()
			.filter((performance) -> status.apply(performance).isDone())
			.toList();
		List<PerformanceView> marked = done.stream()
			.filter((performance) -> hasMarks(performance, status.apply(performance)))
			.toList();
		Map<PerformanceId, ? extends ClosedMarks> marks = this.books.of(field.segment())
			.closed(field.segment(), field.panel(), marked, supposed);
		return new ClosedSegment(done.stream()
			.map((performance) -> new ClosedPerformance(performance.id(), performance.entry(),
					performance.startNumber(), status(status.apply(performance)), marks.get(performance.id())))
			.toList(), this.panels.counted(field.panel()));
	}

	/** What was closed stays with a team that was disqualified afterwards. */
	private static boolean hasMarks(PerformanceView performance, PerformanceStatus status) {
		return performance.hasClosedCards()
				&& (status == PerformanceStatus.CLOSED || status == PerformanceStatus.DISQUALIFIED);
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

	/** A segment, who skates it and whose cards count in it. */
	private record Field(SegmentId segment, List<PerformanceView> performances, CountingPanel panel) {
	}

	/**
	 * What the standing of a segment is made from.
	 *
	 * @param performances those that are done, by starting number
	 * @param panel whose cards they are
	 */
	public record ClosedSegment(List<ClosedPerformance> performances, CountedPanel panel) {

		public ClosedSegment {
			performances = List.copyOf(performances);
		}

		/** How many teams have started. */
		public int started() {
			return ClosedPerformance.started(this.performances);
		}

	}

	/**
	 * Whose cards make the standing of a segment.
	 *
	 * @param judges the numbers of the judges' seats that count, ascending; a substitute
	 * who took over a seat counts under its number
	 * @param notes one sentence a difference from the panel as it was drawn; empty for
	 * none
	 * @param seated who sat on the panel then, in its order
	 */
	public record CountedPanel(List<Integer> judges, List<Sentence> notes, List<SeatedOfficial> seated) {

		public CountedPanel {
			judges = List.copyOf(judges);
			notes = List.copyOf(notes);
			seated = List.copyOf(seated);
		}

		/** Tell whether every judge's own card of every team counts. */
		public boolean isAsDrawn() {
			return this.notes.isEmpty();
		}

	}

	/**
	 * Who had a seat when a segment was tabulated.
	 *
	 * @param club empty for somebody who belongs to none
	 */
	public record SeatedOfficial(SeatPlace place, String name, String club) {
	}

	/**
	 * A performance from which nothing more is expected.
	 *
	 * @param status whether it has marks that count, or why not
	 * @param marks what was closed, {@code null} for nothing. A team disqualified after
	 * its cards were closed keeps them
	 */
	public record ClosedPerformance(PerformanceId id, EntryId entry, int startNumber, EntryStatus status,
			@Nullable ClosedMarks marks) {

		/** The cards of two marks; empty without marks and in points judging. */
		public List<CardMarks> cards() {
			return (this.marks instanceof ClosedMarks.PanelMarks panel) ? panel.cards() : List.of();
		}

		/**
		 * What its score is made of; {@code null} without marks and in placement judging.
		 */
		public ClosedMarks.@Nullable PointsSheet sheet() {
			return (this.marks instanceof ClosedMarks.PointsSheet sheet) ? sheet : null;
		}

		/**
		 * Tell whether the team is counted among those that started; one that withdrew is
		 * counted nowhere.
		 */
		public boolean hasStarted() {
			return this.status != EntryStatus.WITHDRAWN;
		}

		/** How many of these have started. */
		public static int started(List<ClosedPerformance> closed) {
			return (int) closed.stream().filter(ClosedPerformance::hasStarted).count();
		}

	}

}
