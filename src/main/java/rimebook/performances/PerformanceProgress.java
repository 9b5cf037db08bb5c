package rimebook.performances;

import java.util.List;
import java.util.function.Function;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;

/**
 * How far a performance has come by its cards and by its clock: whether nothing was sent
 * for it yet, or all is there.
 */
@Component
class PerformanceProgress {

	private final CardBooks books;

	private final CountingPanels panels;

	private final SkatingClock clocks;

	PerformanceProgress(CardBooks books, CountingPanels panels, SkatingClock clocks) {
		this.books = books;
		this.panels = panels;
		this.clocks = clocks;
	}

	/**
	 * Refuse to undo a call once something came of it.
	 * @throws rimebook.shared.ConflictException if something was sent for it or its clock
	 * was started
	 */
	void requireNotBegun(Performance performance) {
		if (this.books.of(performance.segment()).anySentFor(performance.id())) {
			throw PerformanceRefusals.cardsAlreadySent(performance);
		}
		this.clocks.requireUntouched(performance.view());
	}

	/**
	 * Refuse to close the cards of a performance before all that counts is there.
	 * @return what is closed
	 * @throws rimebook.shared.RuleViolationException naming what is missing
	 * @throws rimebook.shared.ConflictException if the clock was started and not stopped
	 */
	Whole requireWhole(Performance performance) {
		CardBook book = this.books.of(performance.segment());
		CountingPanel panel = this.panels.of(performance.segment());
		book.requireComplete(performance.view(), panel.seats());
		this.clocks.requireAtRest(performance.view());
		return new Whole(book.inWords(performance.view(), panel), panel);
	}

	/**
	 * Tells of the performances of a segment all that was sent and noted, whole or not,
	 * one sentence a card or list; whose cards count is read once for all of them.
	 */
	Function<Performance, List<String>> soFar(SegmentId segment) {
		CardBook book = this.books.of(segment);
		CountingPanel panel = this.panels.of(segment);
		return (performance) -> book.soFar(performance.view(), panel);
	}

	/**
	 * The cards of a performance of which nothing is missing.
	 *
	 * @param words all that counts, for the record
	 * @param panel whose cards they are
	 */
	record Whole(String words, CountingPanel panel) {
	}

}
