package rimebook.keying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.competition.SegmentPlace;
import rimebook.competition.SegmentView;
import rimebook.panels.SeatId;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatView;
import rimebook.paper.PaperCards;
import rimebook.paper.SeatPaper;
import rimebook.paper.Speaker;
import rimebook.performances.PerformanceStatus;
import rimebook.points.CalledElement;
import rimebook.points.CalledListView;
import rimebook.points.DeductionNotes;
import rimebook.points.ListAuthorisations;
import rimebook.points.NotedDeduction;
import rimebook.points.PointsSubmission;
import rimebook.points.PointsWords;
import rimebook.shared.NotFoundException;
import rimebook.stand.StandView;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/**
 * What the keying desk shows of a segment.
 *
 * @param ice who skates, and whose papers are keyed
 * @param sheet what there is of it in points judging
 * @param onPaper the cards on paper
 */
record KeyingPage(SegmentPlace at, Ice ice, CalledSheet sheet, OnPaper onPaper) {

	/** The called elements, none before the first list. */
	public List<CalledElement> elements() {
		return (this.sheet.list() != null) ? this.sheet.list().elements() : List.of();
	}

	/** The elements that have to be graded. */
	public List<CalledElement> counting() {
		return (this.sheet.list() != null) ? this.sheet.list().counting() : List.of();
	}

	/** The seat's newest card, {@code null} without one. */
	public PointsSubmission.@Nullable PointsCardView card(SeatView seat) {
		return this.sheet.cards().get(seat.id());
	}

	/** The grade that a seat gave an element, empty without one. */
	public String grade(SeatView seat, CalledElement element) {
		return Optional.ofNullable(card(seat))
			.map((card) -> card.marks().grade(element))
			.map(PointsWords::grade)
			.orElse("");
	}

	/** The mark that a seat gave a component, empty without one. */
	public String mark(SeatView seat, SegmentRules.ComponentRule component) {
		return Optional.ofNullable(card(seat))
			.map((card) -> card.marks().component(component.name()))
			.map(PointsWords::of)
			.orElse("");
	}

	/** The rules of points judging, where it is known that there are some. */
	public PointsRules pointsRules() {
		return Objects.requireNonNull(this.sheet.rules());
	}

	/**
	 * Tell whether a seat's card that was received has everything that has to be given.
	 */
	public boolean isComplete(SeatPaper paper) {
		return !this.onPaper.lines().isEmpty()
				&& this.onPaper.lines().stream().noneMatch((line) -> words(paper.received(), line).isEmpty());
	}

	/** What stands in a line of a card, empty for nothing. */
	public String words(PaperCards.@Nullable KeyedCard card, PaperCards.CardLine line) {
		return Optional.ofNullable(card).map((marks) -> marks.value(line)).map(line::words).orElse("");
	}

	/** Tell whether those who speak of a card say different things about a line. */
	public boolean isDisputed(SeatPaper paper, PaperCards.CardLine line) {
		return paper.said().voices().stream().map((voice) -> words(voice.marks(), line)).distinct().count() > 1;
	}

	/** What is said to stand in a line, each value with all who say it. */
	public Map<String, List<Speaker>> said(SeatPaper paper, PaperCards.CardLine line) {
		Map<String, List<Speaker>> said = new LinkedHashMap<>();
		paper.said()
			.voices()
			.forEach((voice) -> said.computeIfAbsent(words(voice.marks(), line), (words) -> new ArrayList<>())
				.add(voice.by()));
		said.remove("");
		return said;
	}

	/** The first card after that one that this person has to key. */
	Optional<SeatPaper> nextToKey(SeatPaper after) {
		int at = place(after);
		return this.onPaper.papers()
			.stream()
			.filter((paper) -> place(paper) != at && isToKey(paper))
			.min((one, other) -> Boolean.compare(place(one) < at, place(other) < at));
	}

	private int place(SeatPaper paper) {
		return this.onPaper.papers().stream().map((each) -> each.seat().id()).toList().indexOf(paper.seat().id());
	}

	private boolean isToKey(SeatPaper paper) {
		return switch (paper.stage()) {
			case MISSING -> true;
			case ONCE -> !paper.waitsForOthers();
			case DIFFER -> false;
			case RECEIVED -> !isComplete(paper);
		};
	}

	/** Tell whether the deductions were changed since the list was authorised. */
	public boolean isLate() {
		return this.sheet.authorised() != null && this.sheet.deductions() != null
				&& this.sheet.deductions().sequence() > this.sheet.authorised().deductionsSeen();
	}

	/** A seat's card in an address: "3" for Judge 3, "s1" for the substitute. */
	public String address(SeatView seat) {
		return ((seat.kind() == SeatKind.JUDGE) ? "" : "s") + seat.number();
	}

	/** A seat above a narrow column: "J3", or "S1" for the substitute. */
	public String shortLabel(SeatView seat) {
		return ((seat.kind() == SeatKind.JUDGE) ? "J" : "S") + seat.number();
	}

	/** The card at that address. */
	SeatPaper paper(String address) {
		SeatView seat = this.onPaper.seats()
			.stream()
			.filter((each) -> address(each).equals(address))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("card", address));
		return this.onPaper.papers()
			.stream()
			.filter((paper) -> paper.seat().id().equals(seat.id()))
			.findFirst()
			.orElseGet(() -> SeatPaper.untouched(seat));
	}

	/** The element of a line of the card in words, empty for another line. */
	public String element(PaperCards.CardLine line) {
		return line.kind().equals("GRADE") ? pointsRules().nameOf(line.name()) : "";
	}

	/** The code of an element in words. */
	public String name(CalledElement element) {
		return pointsRules().nameOf(element.code());
	}

	/** A deduction as on the sheet: "Fall: -2.00 (2)". */
	public String words(NotedDeduction deduction) {
		return pointsRules().deduction(deduction.item())
			.map((rule) -> rule.name() + ": -" + rule.points(deduction.count())
					+ ((deduction.count() == 1) ? "" : " (" + deduction.count() + ")"))
			.orElse(deduction.item());
	}

	/** A base value in hundredths with two decimals. */
	public String points(int hundredths) {
		return PointsWords.of(hundredths);
	}

	/** The identity of the performance whose papers are keyed, empty for none. */
	public String performance() {
		return (this.ice.now() != null) ? this.ice.now().row().performance().id().toString() : "";
	}

	/** Tell whether the cards were closed and opened again. */
	public boolean isAgain() {
		return this.ice.now() != null && this.ice.now().row().performance().status() == PerformanceStatus.REOPENED;
	}

	/** Tell whether the cards are closed, and one that does not count is added. */
	public boolean isClosed() {
		return this.ice.now() != null && !this.ice.now().row().performance().status().takesCards();
	}

	/** What an address ends with so that it stays with a performance not on the ice. */
	public String query() {
		if (isClosed()) {
			return "?closed=" + performance();
		}
		return isAgain() ? "?performance=" + performance() : "";
	}

	/** The event that the segment belongs to. */
	public EventView event() {
		return this.at.event();
	}

	/** The segment. */
	public SegmentView segment() {
		return this.at.segment();
	}

	/**
	 * Who skates, and whose cards are keyed.
	 *
	 * @param now the performance whose papers are keyed: on the ice, opened again, or
	 * closed without a card that does not count, {@code null} for none
	 * @param other the other one that takes cards, {@code null} for none
	 * @param next who comes next, {@code null} for nobody
	 */
	record Ice(StandView.@Nullable Now now, StandView.@Nullable Row other, StandView.@Nullable Row next) {
	}

	/**
	 * What there is of a performance judged by points.
	 *
	 * @param rules of points judging, {@code null} in placement judging
	 * @param components to be marked, in the order of the sheet
	 * @param list the elements called, {@code null} before the first list
	 * @param authorised the controller's word for that list, {@code null} while it is
	 * open
	 * @param cards the newest card of each seat that sent one
	 * @param deductions those noted, {@code null} before the first
	 */
	record CalledSheet(@Nullable PointsRules rules, List<SegmentRules.ComponentRule> components,
			@Nullable CalledListView list, ListAuthorisations.@Nullable Authorised authorised,
			Map<SeatId, PointsSubmission.PointsCardView> cards, DeductionNotes.@Nullable DeductionListView deductions) {

		/** In placement judging nothing is called. */
		static final CalledSheet NONE = new CalledSheet(null, List.of(), null, null, Map.of(), null);

	}

	/**
	 * The cards on paper.
	 *
	 * @param papers each seat's card with what was keyed, in the order of the seats
	 * @param lines of a card now; none before the elements are called
	 */
	record OnPaper(List<SeatView> seats, List<SeatPaper> papers, List<PaperCards.CardLine> lines) {
	}

}
