package rimebook.points;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.Amending;
import rimebook.performances.Amendment;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceEvent;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.JudgedElement;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Puts a corrected version on top of the called elements or the deductions of a closed
 * performance.
 */
@Service
class SheetCorrection implements Amending<SheetAmendment> {

	private final PerformanceRegister performances;

	private final CalledListRepository lists;

	private final DeductionListRepository deductions;

	private final PointsBook book;

	private final Acts acts;

	SheetCorrection(PerformanceRegister performances, CalledListRepository lists, DeductionListRepository deductions,
			PointsBook book, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.lists = lists;
		this.deductions = deductions;
		this.book = book;
	}

	@Override
	public Map<String, Class<? extends SheetAmendment>> kinds() {
		return Map.of("element", SheetAmendment.ElementAmendment.class, "deduction",
				SheetAmendment.DeductionAmendment.class);
	}

	/**
	 * {@inheritDoc}
	 * @throws RuleViolationException naming the field: a code or item that the tables do
	 * not have; the last element taken out; {@code grades-missing} for an element that
	 * would count and that a judge has not graded
	 */
	@Override
	@Transactional(readOnly = true)
	public SheetAmendment check(Amendment.SupposedChange<SheetAmendment> change) {
		PerformanceView performance = this.performances.findClosed(change.performance());
		SheetAmendment now = now(performance, change.amendment());
		if (now.equals(change.amendment())) {
			throw new RuleViolationException("nothing-to-correct", "line",
					Sentence.of("points.sheet-already-so", now.spoken(), now.spokenPlace()));
		}
		check(performance, change.amendment());
		return now;
	}

	@Override
	@Transactional
	public void apply(Amendment.SupposedChange<SheetAmendment> change, SheetAmendment expected, Approval approval) {
		PerformanceView performance = this.performances.holdClosed(change.performance());
		SheetAmendment amendment = change.amendment();
		boolean element = amendment instanceof SheetAmendment.ElementAmendment;
		if (!now(performance, amendment).equals(expected)) {
			throw ConflictException.stale(element ? "list-of-elements" : "list-of-deductions");
		}
		check(performance, amendment);
		put(performance, amendment, approval.actor());
		this.acts.publish(PerformanceEvent.CardCorrected.of(performance,
				element ? "elements.corrected" : "deductions.corrected", new PerformanceEvent.CardCorrected.Words(
						amendment.spokenPlace(), expected.spoken(), amendment.spoken()),
				approval));
	}

	private void put(PerformanceView performance, SheetAmendment amendment, Actor actor) {
		if (amendment instanceof SheetAmendment.ElementAmendment element) {
			CalledList old = list(performance);
			this.lists.save(new CalledList(this.acts.nextId(), performance.id(), old.sequence() + 1,
					SheetEdits.with(old.elements(), element, this.acts.nextId()),
					new CalledList.Written(CardOrigin.CORRECTION, actor.name(), this.acts.now())));
		}
		else if (amendment instanceof SheetAmendment.DeductionAmendment deduction) {
			int before = this.book.deductions(performance.id()).map(DeductionList::sequence).orElse(0);
			this.deductions.save(new DeductionList(this.acts.nextId(), performance.id(), before + 1,
					SheetEdits.with(items(performance), deduction, actor.name(), this.acts.now()),
					new CalledList.Written(CardOrigin.CORRECTION, actor.name(), this.acts.now())));
		}
	}

	private SheetAmendment now(PerformanceView performance, SheetAmendment place) {
		return (place instanceof SheetAmendment.ElementAmendment element)
				? SheetEdits.now(list(performance).elements(), element)
				: SheetEdits.now(items(performance), (SheetAmendment.DeductionAmendment) place);
	}

	private void check(PerformanceView performance, SheetAmendment amendment) {
		if (amendment instanceof SheetAmendment.DeductionAmendment deduction) {
			checkDeduction(performance, deduction);
		}
		else if (amendment instanceof SheetAmendment.ElementAmendment element) {
			checkElements(performance, element);
		}
	}

	private void checkElements(PerformanceView performance, SheetAmendment.ElementAmendment amendment) {
		List<CalledElement> elements = SheetEdits.with(list(performance).elements(), amendment, this.acts.nextId());
		if (elements.isEmpty()) {
			throw new RuleViolationException("elements-number", "code", Sentence.of("points.only-element"));
		}
		if (amendment.code() != null) {
			checkElement(performance, elements.get(amendment.number() - 1));
		}
	}

	private void checkElement(PerformanceView performance, CalledElement element) {
		if (element.worth() != JudgedElement.ElementWorth.COUNTS) {
			return;
		}
		if (this.book.rules(performance.segment()).values().find(element.code()).isEmpty()) {
			throw new RuleViolationException("unknown-code", "code",
					Sentence.of("points.unknown-code", element.code()));
		}
		List<Sentence> without = withoutGrade(performance, element);
		if (!without.isEmpty()) {
			throw new RuleViolationException("grades-missing", "code",
					Sentence.of("points.grades-missing", element.number(), element.code(), Series.withCommas(without)));
		}
	}

	private List<Sentence> withoutGrade(PerformanceView performance, CalledElement element) {
		Map<SeatId, PointsCard> cards = this.book.cards(performance.id());
		return this.book.seats(performance.segment())
			.stream()
			.filter((seat) -> Optional.ofNullable(cards.get(seat.id()))
				.filter((card) -> card.marks().grade(element) == null)
				.isPresent())
			.map(SeatView::spoken)
			.toList();
	}

	private void checkDeduction(PerformanceView performance, SheetAmendment.DeductionAmendment deduction) {
		String item = deduction.item();
		if (item == null) {
			return;
		}
		if (this.book.ruleSet(performance.segment()).deduction(item).isEmpty()) {
			throw new RuleViolationException("unknown-deduction", "item",
					Sentence.of("points.unknown-deduction", item));
		}
		Required.number("count", deduction.count(), 1, 1000);
	}

	private CalledList list(PerformanceView performance) {
		return this.book.list(performance.id()).orElseThrow(() -> NotFoundException.of("list", performance.id()));
	}

	private List<NotedDeduction> items(PerformanceView performance) {
		return this.book.deductions(performance.id()).map(DeductionList::items).orElseGet(() -> List.of());
	}

}
