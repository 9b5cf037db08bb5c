package rimebook.technical;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;

import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.performances.PerformanceView;
import rimebook.points.CalledListView;
import rimebook.rulings.Rulings;
import rimebook.stand.Stand;
import rimebook.stand.StandView;
import rimebook.tabulation.points.PointsRules;

/** Gathers what the technical desk shows. */
@Component
class TechnicalComposer {

	private final Stand stand;

	private final RuleSets ruleSets;

	private final CalledParts called;

	private final Rulings rulings;

	TechnicalComposer(Stand stand, RuleSets ruleSets, CalledParts called, Rulings rulings) {
		this.stand = stand;
		this.ruleSets = ruleSets;
		this.called = called;
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
		model.addAttribute("competition", view.at().competition());
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
	public DeskParts parts(SegmentId segment) {
		return parts(this.stand.ofSegment(segment));
	}

	private DeskParts parts(StandView view) {
		PointsRules rules = this.ruleSets.of(view.event());
		StandView.Now now = atHand(view);
		PerformanceView skating = (now != null) ? now.row().performance() : null;
		Optional<CalledListView> list = this.called.list(skating);
		return new DeskParts(ice(view), this.called.plan(skating, rules, list),
				this.called.called(skating, view.at(), rules, list), this.called.deducted(skating, rules));
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

	/** A code of the table of values, to be searched for. */
	record Code(String code, String name) {
	}

}
