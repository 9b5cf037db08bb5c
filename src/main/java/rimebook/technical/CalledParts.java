package rimebook.technical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentPlace;
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
import rimebook.tabulation.points.PointsRules;

/** Lays out what was planned, called and noted of the performance at hand, if any is. */
@Component
class CalledParts {

	private final PlannedElements plans;

	private final ElementCalls calls;

	private final ListAuthorisations authorisations;

	private final DeductionNotes deductions;

	private final LateDeductions late;

	private final TechnicalDesk desk;

	CalledParts(PlannedElements plans, ElementCalls calls, ListAuthorisations authorisations, DeductionNotes deductions,
			LateDeductions late, TechnicalDesk desk) {
		this.plans = plans;
		this.calls = calls;
		this.authorisations = authorisations;
		this.deductions = deductions;
		this.late = late;
		this.desk = desk;
	}

	/** How far the plan has been called. */
	TechnicalPart.Plan plan(@Nullable PerformanceView skating, PointsRules rules, Optional<CalledListView> list) {
		List<String> codes = (skating != null) ? this.plans.of(skating.entry(), skating.segment()).codes() : List.of();
		return new TechnicalPart.Plan(this.desk.progress(codes, elements(list))
			.stream()
			.map((line) -> new TechnicalPart.Line(line.number(), line.code(), rules.nameOf(line.code()), line.state()))
			.toList());
	}

	/** The newest list of called elements, none between two performances. */
	Optional<CalledListView> list(@Nullable PerformanceView skating) {
		return Optional.ofNullable(skating).flatMap((performance) -> this.calls.ofPerformance(performance.id()));
	}

	private static List<CalledElement> elements(Optional<CalledListView> list) {
		return list.map(CalledListView::elements).orElse(List.of());
	}

	/** The called elements as they are now. */
	TechnicalPart.Called called(@Nullable PerformanceView skating, SegmentPlace at, PointsRules rules,
			Optional<CalledListView> list) {
		RinkClock clock = new RinkClock(at.competition().zone());
		List<CalledElement> elements = elements(list);
		List<TechnicalDesk.CodeOptions> options = this.desk.options(at.segment().id(), elements);
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

	/** The deductions as they are now. */
	TechnicalPart.Deducted deducted(@Nullable PerformanceView skating, PointsRules rules) {
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

}
