package rimebook.stand.web;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.ui.Model;

/** The parts of the stand that follow by themselves. */
record StandParts(OrderPart order, ClockPart clock, SeatsPart seats, ToldPart told, DeductionsPart deductions,
		DecisionPart decision, PaperPart paper, RulingsPart rulings, ReopenedPart reopened, PanelPart panel,
		GuessesPart guesses, SetAsidePart setAside, BoundPart bound, StandingPart standing) {

	void into(Model model) {
		model.addAttribute("order", this.order);
		model.addAttribute("clock", this.clock);
		model.addAttribute("seats", this.seats);
		model.addAttribute("told", this.told);
		model.addAttribute("deductions", this.deductions);
		model.addAttribute("decision", this.decision);
		model.addAttribute("paper", this.paper);
		model.addAttribute("reopened", this.reopened);
		model.addAttribute("teamRulings", this.rulings);
		model.addAttribute("panel", this.panel);
		model.addAttribute("guesses", this.guesses);
		model.addAttribute("setAside", this.setAside);
		model.addAttribute("bound", this.bound);
		model.addAttribute("standingNow", this.standing);
		model.addAttribute("onIce", StandPage.onIce(this.decision));
	}

	/**
	 * The names of the parts that are no longer as the page shows them.
	 * @param seen the prints on the page, by the name of the part
	 */
	Set<String> changed(Map<String, String> seen) {
		return all().entrySet()
			.stream()
			.filter((part) -> !part.getValue().print().equals(seen.get(part.getKey())))
			.map(Map.Entry::getKey)
			.collect(Collectors.toSet());
	}

	/** Those that the page has: some are there only while a team is on the ice. */
	private Map<String, LivePart> all() {
		Map<String, LivePart> all = new HashMap<>(
				Map.of("order", this.order, "decision", this.decision, "paper", this.paper, "rulings", this.rulings,
						"reopened", this.reopened, "panel", this.panel, "guesses", this.guesses));
		all.put("setAside", this.setAside);
		all.put("bound", this.bound);
		all.put("standing", this.standing);
		if (this.decision.now() != null) {
			all.putAll(Map.of("clock", this.clock, "seats", this.seats, "told", this.told));
		}
		if (!this.deductions.equals(DeductionsPart.NONE)) {
			all.put("deductions", this.deductions);
		}
		return all;
	}

}
