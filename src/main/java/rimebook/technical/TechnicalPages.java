package rimebook.technical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.entries.PlannedElements;
import rimebook.pages.RinkClock;
import rimebook.performances.PerformanceView;
import rimebook.points.CalledElement;
import rimebook.points.CalledListView;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.LateDeductions;
import rimebook.points.ListAuthorisations;
import rimebook.points.NotedDeduction;
import rimebook.points.PointsWords;
import rimebook.points.TechnicalDesk;
import rimebook.rulings.Rulings;
import rimebook.stand.Stand;
import rimebook.stand.StandView;
import rimebook.tabulation.points.PointsRules;

/** Gathers what the technical desk shows. */
@Component
class TechnicalPages {

	private final Stand stand;

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final PlannedElements plans;

	private final ElementCalls calls;

	private final ListAuthorisations authorisations;

	private final DeductionNotes deductions;

	private final LateDeductions late;

	private final TechnicalDesk desk;

	private final Rulings rulings;

	TechnicalPages(Stand stand, Competitions competitions, RuleSets ruleSets, PlannedElements plans, ElementCalls calls,
			ListAuthorisations authorisations, DeductionNotes deductions, LateDeductions late, TechnicalDesk desk,
			Rulings rulings) {
		this.stand = stand;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.plans = plans;
		this.calls = calls;
		this.authorisations = authorisations;
		this.deductions = deductions;
		this.late = late;
		this.desk = desk;
		this.rulings = rulings;
	}

	/**
	 * Lay the whole page out.
	 * @throws rimebook.shared.NotFoundException if the segment is not judged by points
	 */
	@Transactional(readOnly = true)
	public void into(SegmentId segment, Model model) {
		StandView view = this.stand.ofSegment(segment);
		PointsRules rules = this.ruleSets.of(view.event());
		model.addAttribute("event", view.event());
		model.addAttribute("segment", view.segment());
		model.addAttribute("competition", this.competitions.competition(view.event().competition()));
		model.addAttribute("path", "/desk/technical/" + segment);
		model.addAttribute("codes",
				rules.values().values().keySet().stream().map((code) -> code(rules, code)).toList());
		model.addAttribute("items", QuickDeduction.in(rules));
		model.addAttribute("fromMemory", QuickDeduction.anyFromMemory(rules));
		parts(view).into(model);
	}

	private static Code code(PointsRules rules, String code) {
		return new Code(code, rules.nameOf(code));
	}

	/** The parts as they are now. */
	@Transactional(readOnly = true)
	public TechnicalParts parts(SegmentId segment) {
		return parts(this.stand.ofSegment(segment));
	}

	private TechnicalParts parts(StandView view) {
		PointsRules rules = this.ruleSets.of(view.event());
		CompetitionView competition = this.competitions.competition(view.event().competition());
		StandView.Now now = atHand(view);
		PerformanceView skating = (now != null) ? now.row().performance() : null;
		Optional<CalledListView> list = Optional.ofNullable(skating)
			.flatMap((performance) -> this.calls.ofPerformance(performance.id()));
		return new TechnicalParts(ice(view), plan(skating, rules, elements(list)),
				called(skating, view, rules, list, new RinkClock(competition.zone())), deducted(skating, rules));
	}

	private static List<CalledElement> elements(Optional<CalledListView> list) {
		return list.map(CalledListView::elements).orElse(List.of());
	}

	private TechnicalPart.Ice ice(StandView view) {
		StandView.Row next = view.next();
		String then = (next != null) ? next.performance().startNumber() + ", " + next.team() : "";
		StandView.Now now = atHand(view);
		if (now == null) {
			return new TechnicalPart.Ice(new TechnicalPart.Ice.Skating("", 0, "", "", false), view.open(), then,
					List.of());
		}
		StandView.Row row = now.row();
		return new TechnicalPart.Ice(
				new TechnicalPart.Ice.Skating(row.performance().id().toString(), row.performance().startNumber(),
						row.team(), row.club(), view.now() == null),
				view.open(), then, this.rulings.ofEntry(row.performance().entry(), row.performance().segment()));
	}

	/** The team on the ice, else the one whose cards were opened again. */
	private static StandView.@Nullable Now atHand(StandView view) {
		return (view.now() != null) ? view.now() : view.reopened();
	}

	private TechnicalPart.Plan plan(@Nullable PerformanceView skating, PointsRules rules,
			List<CalledElement> elements) {
		List<String> codes = (skating != null) ? this.plans.of(skating.entry(), skating.segment()).codes() : List.of();
		return new TechnicalPart.Plan(this.desk.progress(codes, elements)
			.stream()
			.map((line) -> new TechnicalPart.Line(line.number(), line.code(), rules.nameOf(line.code()), line.state()))
			.toList());
	}

	private TechnicalPart.Called called(@Nullable PerformanceView skating, StandView view, PointsRules rules,
			Optional<CalledListView> list, RinkClock clock) {
		List<CalledElement> elements = elements(list);
		List<TechnicalDesk.CodeOptions> options = this.desk.options(view.segment().id(), elements);
		List<TechnicalRow> rows = new ArrayList<>();
		for (int i = 0; i < elements.size(); i++) {
			rows.add(row(elements.get(i), rules, options.get(i)));
		}
		String authorised = Optional.ofNullable(skating)
			.flatMap((performance) -> this.authorisations.ofPerformance(performance.id()))
			.map(ListAuthorisations.Authorised::controller)
			.orElse("");
		return new TechnicalPart.Called(
				new TechnicalPart.Called.Version(list.map(CalledListView::sequence).orElse(0),
						list.map(CalledListView::calledBy).orElse(""),
						list.map((called) -> clock.time(called.receivedAt())).orElse("")),
				rows, authorised, elements.stream().filter(CalledElement::review).count(), late(skating, rules));
	}

	private String late(@Nullable PerformanceView skating, PointsRules rules) {
		return Optional.ofNullable(skating)
			.flatMap((performance) -> this.late.ofPerformance(performance.id()))
			.map((list) -> list.deductions().isEmpty() ? "–"
					: list.deductions().stream().map((noted) -> words(noted, rules)).collect(Collectors.joining(", ")))
			.orElse("");
	}

	private static TechnicalRow row(CalledElement element, PointsRules rules, TechnicalDesk.CodeOptions options) {
		String base = (element.base() != null) ? PointsWords.of(element.base())
				: rules.values().find(element.code()).map((value) -> value.base().toString()).orElse("");
		return new TechnicalRow(element, rules.nameOf(element.code()), element.counts() ? base : "", options);
	}

	private TechnicalPart.Deducted deducted(@Nullable PerformanceView skating, PointsRules rules) {
		return Optional.ofNullable(skating)
			.flatMap((performance) -> this.deductions.ofPerformance(performance.id()))
			.map((list) -> new TechnicalPart.Deducted(list.sequence(),
					list.deductions().stream().map((noted) -> row(noted, rules)).toList()))
			.orElseGet(() -> new TechnicalPart.Deducted(0, List.of()));
	}

	private static TechnicalPart.DeductedRow row(NotedDeduction noted, PointsRules rules) {
		return new TechnicalPart.DeductedRow(words(noted, rules), noted.notedBy());
	}

	private static String words(NotedDeduction noted, PointsRules rules) {
		return rules.deduction(noted.item())
			.map((rule) -> rule.name() + ": -" + rule.points(noted.count())
					+ ((noted.count() == 1) ? "" : " (" + noted.count() + ")"))
			.orElse(noted.item());
	}

	/** A code of the table of values, to be searched for. */
	record Code(String code, String name) {
	}

}
