package rimebook.marks.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.marks.AuthorisedListView;
import rimebook.marks.CalledElement;
import rimebook.marks.CalledListView;
import rimebook.marks.DeductionListView;
import rimebook.marks.NotedDeduction;
import rimebook.marks.PointsCardView;
import rimebook.marks.PointsWords;
import rimebook.marks.StandView;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.shared.NotFoundException;
import rimebook.tabulation.points.ComponentRule;
import rimebook.tabulation.points.PointsRules;

/**
 * What the keying desk shows of a segment judged by points.
 *
 * @param now the performance on the ice, {@code null} between two
 * @param next who comes next, {@code null} for nobody
 * @param list the elements called, {@code null} before the first list
 * @param authorised the controller's word for that list, {@code null} while it is open
 * @param cards the newest card of each seat that sent one
 * @param deductions those noted, {@code null} before the first
 * @param components to be marked, in the order of the sheet
 */
record KeyingPage(CompetitionView competition, EventView event, SegmentView segment, StandView.@Nullable Now now,
		StandView.@Nullable Row next, PointsRules rules, List<ComponentRule> components, List<SeatView> seats,
		@Nullable CalledListView list, @Nullable AuthorisedListView authorised, Map<SeatId, PointsCardView> cards,
		@Nullable DeductionListView deductions) {

	/** The called elements, none before the first list. */
	public List<CalledElement> elements() {
		return (this.list != null) ? this.list.elements() : List.of();
	}

	/** The elements that have to be graded. */
	public List<CalledElement> counting() {
		return (this.list != null) ? this.list.counting() : List.of();
	}

	/** The seat's newest card, {@code null} without one. */
	public @Nullable PointsCardView card(SeatView seat) {
		return this.cards.get(seat.id());
	}

	/** The grade that a seat gave an element, empty without one. */
	public String grade(SeatView seat, CalledElement element) {
		return Optional.ofNullable(card(seat))
			.map((card) -> card.marks().grade(element))
			.map(PointsWords::grade)
			.orElse("");
	}

	/** The mark that a seat gave a component, empty without one. */
	public String mark(SeatView seat, ComponentRule component) {
		return Optional.ofNullable(card(seat))
			.map((card) -> card.marks().component(component.name()))
			.map(PointsWords::of)
			.orElse("");
	}

	/** Tell whether a seat's card has everything that has to be given. */
	public boolean isComplete(SeatView seat) {
		return this.list != null && counting().stream().noneMatch((element) -> grade(seat, element).isEmpty())
				&& this.components.stream().noneMatch((component) -> mark(seat, component).isEmpty());
	}

	/** The first seat after that one whose card is not complete. */
	Optional<SeatView> nextMissing(SeatView after) {
		return this.seats.stream()
			.filter((seat) -> !isComplete(seat) && !seat.id().equals(after.id()))
			.min((one, other) -> Boolean.compare(one.number() < after.number(), other.number() < after.number()));
	}

	/** The seat of that number. */
	SeatView seat(int number) {
		return this.seats.stream()
			.filter((seat) -> seat.number() == number)
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("seat", number));
	}

	/** The code of an element in words. */
	public String name(CalledElement element) {
		return this.rules.nameOf(element.code());
	}

	/** A deduction as on the sheet: "Fall: -2.00 (2)". */
	public String words(NotedDeduction deduction) {
		return this.rules.deduction(deduction.item())
			.map((rule) -> rule.name() + ": -" + rule.points(deduction.count())
					+ ((deduction.count() == 1) ? "" : " (" + deduction.count() + ")"))
			.orElse(deduction.item());
	}

	/** A base value in hundredths with two decimals. */
	public String points(int hundredths) {
		return PointsWords.of(hundredths);
	}

	/** The identity of the performance on the ice, empty between two. */
	String performance() {
		return (this.now != null) ? this.now.row().performance().id().toString() : "";
	}

}
