package rimebook.protests.web;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;
import org.springframework.util.StringUtils;

import rimebook.competition.Competitions;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.pages.Choice;
import rimebook.performances.ClosedCards;
import rimebook.performances.ClosedMarks;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.SegmentRun;
import rimebook.points.PointsLine;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.JudgedElement;

/**
 * What is closed in a segment, as the forms of corrections show it and let choose from
 * it.
 */
@Component
class ClosedChoices {

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final SegmentRun run;

	private final ClosedCards closed;

	private final Entries entries;

	ClosedChoices(Competitions competitions, RuleSets ruleSets, SegmentRun run, ClosedCards closed, Entries entries) {
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.run = run;
		this.closed = closed;
		this.entries = entries;
	}

	/**
	 * The places that a correction can be about: as many as any list has, and further
	 * ones.
	 */
	List<Choice> places(SegmentId segment, boolean elements) {
		List<ClosedMarks.PointsSheet> sheets = this.closed.ofSegment(segment)
			.stream()
			.map(ClosedCards.ClosedPerformance::sheet)
			.filter(Objects::nonNull)
			.toList();
		int most = sheets.stream()
			.mapToInt((sheet) -> elements ? sheet.elements().size() : sheet.deductions().size())
			.max()
			.orElse(0);
		Stream<SheetPlace> there = IntStream.rangeClosed(1, most).mapToObj((i) -> new SheetPlace(elements, i, false));
		Stream<SheetPlace> further = IntStream.rangeClosed(1, elements ? most + 1 : 1)
			.mapToObj((i) -> new SheetPlace(elements, i, true));
		return Stream.concat(there, further)
			.map((line) -> Choice.of(line, StringUtils.capitalize(line.words())))
			.toList();
	}

	/** What the technical panel sent for each closed performance. */
	List<ProtestsPage.ClosedSheet> closedSheets(SegmentId segment, boolean elements) {
		return this.closed.ofSegment(segment)
			.stream()
			.filter((performance) -> performance.sheet() != null)
			.map((performance) -> new ProtestsPage.ClosedSheet(performance.startNumber(), team(performance.entry()),
					elements ? codes(performance.sheet()) : noted(performance.sheet())))
			.toList();
	}

	private static List<String> codes(ClosedMarks.PointsSheet sheet) {
		return sheet.elements()
			.stream()
			.map((element) -> element.number() + " " + element.code()
					+ ((element.worth() == JudgedElement.ElementWorth.COUNTS) ? ""
							: " (" + element.worth().words() + ")"))
			.toList();
	}

	private static List<String> noted(ClosedMarks.PointsSheet sheet) {
		return sheet.deductions().stream().map(DeductionRule.Deduction::words).toList();
	}

	/** The deductions of the event's rule set. */
	List<Choice> items(SegmentId segment) {
		return this.ruleSets.of(this.competitions.eventOf(segment))
			.deductions()
			.stream()
			.map((rule) -> Choice.of(rule.item(), rule.name() + " (" + rule.unit().words() + ")"))
			.toList();
	}

	/** The performances whose cards are closed. */
	List<Choice> closedPerformances(SegmentId segment) {
		return this.run.performances(segment)
			.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.CLOSED)
			.map((performance) -> Choice.of(performance.id(),
					performance.startNumber() + "  " + team(performance.entry())))
			.toList();
	}

	/** The counting seats of the panel. */
	List<Choice> seats(SegmentId segment) {
		return this.closed.seats(segment).stream().map((seat) -> Choice.of(seat.id(), seat.label())).toList();
	}

	/** The cards as they are closed, which a correction is measured against. */
	List<ProtestsPage.ClosedLine> closedCards(SegmentId segment) {
		return this.closed.ofSegment(segment)
			.stream()
			.filter((performance) -> !performance.cards().isEmpty())
			.map((performance) -> new ProtestsPage.ClosedLine(performance.startNumber(), team(performance.entry()),
					performance.cards()))
			.toList();
	}

	/** Tell whether elements and components are judged, not places. */
	boolean isJudgedByPoints(SegmentId segment) {
		return this.competitions.eventOf(segment).isJudgedByPoints();
	}

	/** The lines of a card in points judging: as many elements as any list has. */
	List<Choice> lines(SegmentId segment) {
		List<ClosedMarks.PointsSheet> sheets = this.closed.ofSegment(segment)
			.stream()
			.map(ClosedCards.ClosedPerformance::sheet)
			.filter(Objects::nonNull)
			.toList();
		int elements = sheets.stream().mapToInt((sheet) -> sheet.elements().size()).max().orElse(0);
		Stream<PointsLine> numbered = IntStream.rangeClosed(1, elements).mapToObj(PointsLine::ofElement);
		Stream<PointsLine> named = sheets.stream()
			.flatMap((sheet) -> sheet.components().stream())
			.map((component) -> PointsLine.ofComponent(component.name()))
			.distinct();
		return Stream.concat(numbered, named)
			.map((line) -> Choice.of(line, StringUtils.capitalize(line.words())))
			.toList();
	}

	private String team(EntryId entry) {
		return this.entries.entry(entry).team().name();
	}

}
