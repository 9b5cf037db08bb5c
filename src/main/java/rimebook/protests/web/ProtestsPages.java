package rimebook.protests.web;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;
import org.springframework.util.StringUtils;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentPlace;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.pages.Choice;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.ClosedCards;
import rimebook.performances.ClosedMarks;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.SegmentRun;
import rimebook.points.PointsLine;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.Standings;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.JudgedElement;

/** Gathers what the pages about protests and corrections show. */
@Component
class ProtestsPages {

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final Entries entries;

	private final Panels panels;

	private final SegmentRun run;

	private final ClosedCards closed;

	private final Standings standings;

	private final Protests protests;

	private final Corrections corrections;

	ProtestsPages(Competitions competitions, RuleSets ruleSets, Entries entries, Panels panels, SegmentRun run,
			ClosedCards closed, Standings standings, Protests protests, Corrections corrections) {
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.entries = entries;
		this.panels = panels;
		this.run = run;
		this.closed = closed;
		this.standings = standings;
		this.protests = protests;
		this.corrections = corrections;
	}

	ProtestsPage of(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		return new ProtestsPage(
				new SegmentPlace(this.competitions.competition(event.competition()), event, event.segment(id)),
				this.standings.result(id).orElse(null),
				this.protests.ofSegment(id)
					.stream()
					.map((protest) -> new ProtestsPage.ProtestLine(protest, team(protest.claim().entry())))
					.toList(),
				this.corrections.ofSegment(id).stream().map(this::line).toList(), this.standings.postings(id));
	}

	ProtestsPage.CorrectionLine line(CorrectionView correction) {
		return new ProtestsPage.CorrectionLine(correction,
				team(this.run.performance(correction.change().performance()).entry()), whose(correction));
	}

	private String whose(CorrectionView correction) {
		SeatId seat = correction.change().seat();
		return (seat != null) ? this.panels.seat(seat).label() : correction.change().amendment().list();
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

	/** The teams of the segment's event that may protest. */
	List<Choice> teams(SegmentId segment) {
		return this.entries.ofEvent(this.competitions.eventOf(segment).id())
			.stream()
			.map((entry) -> Choice.of(entry.id(), entry.team().name()))
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

	/** The upheld protests a correction may rest on. */
	List<Choice> upheld(SegmentId segment) {
		return this.protests.ofSegment(segment)
			.stream()
			.filter((protest) -> protest.state() == ProtestView.State.UPHELD)
			.map((protest) -> Choice.of(protest.id(), team(protest.claim().entry()) + ": " + protest.claim().text()))
			.toList();
	}

	private String team(EntryId entry) {
		return this.entries.entry(entry).team().name();
	}

}
