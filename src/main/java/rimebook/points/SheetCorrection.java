package rimebook.points;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardCorrected;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.ElementWorth;

/**
 * Puts a corrected version on top of the called elements or the deductions of a closed
 * performance. Who may ask for it and who approves it is decided by protests; here the
 * old version stays for ever.
 */
@Service
public class SheetCorrection {

	private final PerformanceRegister performances;

	private final CalledListRepository lists;

	private final DeductionListRepository deductions;

	private final PointsBook book;

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	SheetCorrection(PerformanceRegister performances, CalledListRepository lists, DeductionListRepository deductions,
			PointsBook book, Ids ids, Clock clock, ApplicationEventPublisher events) {
		this.performances = performances;
		this.lists = lists;
		this.deductions = deductions;
		this.book = book;
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Return what counts now in one place, as in {@link SheetLine}.
	 * @throws ConflictException {@code card-not-closed} if it can still be changed freely
	 * @throws RuleViolationException {@code line-unknown}
	 */
	@Transactional(readOnly = true)
	public String closedText(PerformanceId performance, SheetLine line) {
		return text(this.performances.findClosed(performance), line);
	}

	/**
	 * Check that another text could stand there.
	 * @throws RuleViolationException naming the field: a code or item that the tables do
	 * not have; the last element taken out; {@code grades-missing} for an element that
	 * would count and that a judge has not graded
	 */
	@Transactional(readOnly = true)
	public void check(PerformanceId performance, SheetLine line, String corrected) {
		check(this.performances.findClosed(performance), line, corrected);
	}

	/**
	 * Put the new text in as the next version.
	 * @param expected the text the correction was decided on
	 * @param corrected the text that counts from now on
	 * @param reason why, for the record
	 * @param actor who approved it
	 * @throws ConflictException if the cards are not closed, or something else stands
	 * there now
	 */
	@Transactional
	public void correct(PerformanceId id, SheetLine line, String expected, String corrected, String reason,
			Actor actor) {
		PerformanceView performance = this.performances.holdClosed(id);
		if (!text(performance, line).equals(expected)) {
			throw ConflictException.stale(line.element() ? "list of elements" : "list of deductions");
		}
		check(performance, line, corrected);
		if (line.element()) {
			correctElements(performance, line, corrected, actor);
		}
		else {
			correctDeductions(performance, line, corrected, actor);
		}
		String label = line.words() + ": ";
		this.events.publishEvent(new CardCorrected(id, performance.segment(), performance.entry(),
				label + line.words(expected) + " became " + line.words(corrected),
				AuditedChange
					.of(actor, "performance", id, line.element() ? "elements.corrected" : "deductions.corrected")
					.from(label + line.words(expected), label + line.words(corrected))
					.because(reason)));
	}

	private void correctElements(PerformanceView performance, SheetLine line, String corrected, Actor actor) {
		CalledList old = list(performance);
		this.lists.save(new CalledList(this.ids.next(), performance.id(), old.sequence() + 1,
				SheetEdits.elements(old.elements(), line, corrected, this.ids.next()), CardOrigin.CORRECTION,
				actor.name(), this.clock.instant()));
	}

	private void correctDeductions(PerformanceView performance, SheetLine line, String corrected, Actor actor) {
		int before = this.book.deductions(performance.id()).map(DeductionList::sequence).orElse(0);
		this.deductions.save(new DeductionList(this.ids.next(), performance.id(), before + 1,
				SheetEdits.deductions(items(performance), line, corrected, actor.name(), this.clock.instant()),
				CardOrigin.CORRECTION, actor.name(), this.clock.instant()));
	}

	private String text(PerformanceView performance, SheetLine line) {
		return line.element() ? SheetEdits.text(list(performance).elements(), line)
				: SheetEdits.noted(items(performance), line);
	}

	private void check(PerformanceView performance, SheetLine line, String corrected) {
		if (!line.element()) {
			checkDeduction(performance, corrected);
			return;
		}
		List<CalledElement> elements = SheetEdits.elements(list(performance).elements(), line, corrected,
				this.ids.next());
		if (elements.isEmpty()) {
			throw new RuleViolationException("elements-number", "code",
					"It is the only element; a performance without any has no score.");
		}
		if (!corrected.isEmpty()) {
			checkElement(performance, elements.get(line.number() - 1));
		}
	}

	private void checkElement(PerformanceView performance, CalledElement element) {
		if (element.worth() != ElementWorth.COUNTS) {
			return;
		}
		if (this.book.rules(performance.segment()).values().find(element.code()).isEmpty()) {
			throw new RuleViolationException("unknown-code", "code",
					"The table of values has no code '" + element.code() + "'; give one of its codes.");
		}
		List<String> without = withoutGrade(performance, element);
		if (!without.isEmpty()) {
			throw new RuleViolationException("grades-missing", "code", "Element " + element.number() + " ("
					+ element.code() + ") would count, but has no grade of " + String.join(", ", without)
					+ ". Grades cannot be given after the cards are closed; an element without grades can only stand there without value.");
		}
	}

	private List<String> withoutGrade(PerformanceView performance, CalledElement element) {
		Map<SeatId, PointsCard> cards = this.book.cards(performance.id());
		return this.book.seats(performance.segment())
			.stream()
			.filter((seat) -> Optional.ofNullable(cards.get(seat.id()))
				.filter((card) -> card.marks().grade(element) == null)
				.isPresent())
			.map(SeatView::label)
			.toList();
	}

	private void checkDeduction(PerformanceView performance, String corrected) {
		if (corrected.isEmpty()) {
			return;
		}
		String item = SheetLine.code(corrected);
		if (this.book.ruleSet(performance.segment()).deduction(item).isEmpty()) {
			throw new RuleViolationException("unknown-deduction", "item",
					"The rule set has no deduction '" + item + "'; choose one of its table.");
		}
		Required.number("count", SheetLine.count(corrected), 1, 1000);
	}

	private CalledList list(PerformanceView performance) {
		return this.book.list(performance.id()).orElseThrow(() -> NotFoundException.of("list", performance.id()));
	}

	private List<NotedDeduction> items(PerformanceView performance) {
		return this.book.deductions(performance.id()).map(DeductionList::items).orElseGet(() -> List.of());
	}

}
