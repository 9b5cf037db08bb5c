package rimebook.points;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.performances.Amendment;
import rimebook.performances.ClosedMarks;
import rimebook.performances.CountingPanel;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/** Puts together what the scores of closed performances are made of. */
@Component
class PointsSheets {

	private final PointsBook book;

	PointsSheets(PointsBook book) {
		this.book = book;
	}

	/** The sheet of each performance that was closed, by its identity. */
	Reading of(SegmentId segment, CountingPanel panel, Collection<PerformanceView> closed) {
		List<UUID> ids = closed.stream().map((performance) -> performance.id().value()).toList();
		return new Reading(this.book.ruleSet(segment), this.book.rules(segment).components(), panel,
				this.book.newestLists(ids), marks(this.book.newestCards(ids)), this.book.newestDeductions(ids));
	}

	private static Map<UUID, Map<SeatId, PointsMarks>> marks(Map<UUID, Map<SeatId, PointsCard>> cards) {
		Map<UUID, Map<SeatId, PointsMarks>> marks = new HashMap<>();
		cards.forEach((performance, sent) -> {
			Map<SeatId, PointsMarks> panel = new HashMap<>();
			sent.forEach((seat, card) -> panel.put(seat, card.marks()));
			marks.put(performance, panel);
		});
		return marks;
	}

	/** Everything that was read for some performances at once. */
	record Reading(PointsRules rules, List<SegmentRules.ComponentRule> components, CountingPanel panel,
			Map<UUID, CalledList> lists, Map<UUID, Map<SeatId, PointsMarks>> cards,
			Map<UUID, DeductionList> deductions) {

		/**
		 * Read as if that stood there instead; what is none of this judging changes
		 * nothing.
		 */
		void suppose(Amendment.SupposedChange<?> change) {
			UUID performance = change.performance().value();
			if (change.amendment() instanceof LineAmendment line) {
				suppose(performance, change.judge(), line);
			}
			else if (change.amendment() instanceof SheetAmendment.ElementAmendment element) {
				this.lists.computeIfPresent(performance, (id, list) -> list.supposing(element));
			}
			else if (change.amendment() instanceof SheetAmendment.DeductionAmendment deduction) {
				DeductionList noted = this.deductions.get(performance);
				this.deductions.put(performance, DeductionList.supposing(change.performance(),
						(noted != null) ? noted.items() : List.of(), deduction));
			}
		}

		/** Read one line of one card as if it held another value. */
		private void suppose(UUID performance, SeatId seat, LineAmendment line) {
			CalledList list = this.lists.get(performance);
			Map<SeatId, PointsMarks> panel = this.cards.get(performance);
			if (list != null && panel != null) {
				panel.computeIfPresent(seat, (whose, marks) -> PointsCorrection.changed(marks, list.view(), line));
			}
		}

		ClosedMarks.PointsSheet sheet(PerformanceId performance) {
			List<Optional<PointsMarks>> panel = panel(performance);
			return new ClosedMarks.PointsSheet(
					Objects.requireNonNull(this.lists.get(performance.value()))
						.elements()
						.stream()
						.map((element) -> judged(element, panel))
						.toList(),
					this.components.stream().map((component) -> judged(component, panel)).toList(),
					Optional.ofNullable(this.deductions.get(performance.value()))
						.map(DeductionList::items)
						.orElse(List.of())
						.stream()
						.map(this::deduction)
						.toList());
		}

		private List<Optional<PointsMarks>> panel(PerformanceId performance) {
			Map<SeatId, PointsMarks> sent = this.cards.getOrDefault(performance.value(), Map.of());
			return this.panel.seats()
				.stream()
				.map((seat) -> Optional.ofNullable(sent.get(seat.id()))
					.filter((marks) -> !this.panel.isExcused(performance, seat.id())))
				.toList();
		}

		private static JudgedElement judged(CalledElement element, List<Optional<PointsMarks>> panel) {
			List<@Nullable Integer> grades = new ArrayList<>();
			panel.forEach((marks) -> grades.add(marks.map((given) -> given.grade(element)).orElse(null)));
			return new JudgedElement(element.number(), element.code(), element.worth(),
					(element.base() != null) ? new Points(element.base()) : null, grades);
		}

		private static JudgedComponent judged(SegmentRules.ComponentRule component, List<Optional<PointsMarks>> panel) {
			List<@Nullable Points> given = new ArrayList<>();
			panel.forEach((marks) -> given
				.add(marks.map((card) -> card.component(component.name())).map(Points::new).orElse(null)));
			return new JudgedComponent(component.name(), given);
		}

		private DeductionRule.Deduction deduction(NotedDeduction noted) {
			return this.rules.deduction(noted.item()).orElseThrow().take(noted.count(), noted.notedBy());
		}

	}

}
