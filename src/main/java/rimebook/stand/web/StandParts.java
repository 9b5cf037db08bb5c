package rimebook.stand.web;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.ui.Model;

/** The parts of the stand that follow by themselves. */
record StandParts(Course course, Ice ice, People people) {

	void into(Model model) {
		model.addAttribute("order", this.course.order());
		model.addAttribute("tooFew", this.course.few());
		model.addAttribute("clock", this.ice.clock());
		model.addAttribute("seats", this.ice.seats());
		model.addAttribute("told", this.ice.told());
		model.addAttribute("deductions", this.ice.deductions());
		model.addAttribute("decision", this.ice.decision());
		model.addAttribute("paper", this.course.paper());
		model.addAttribute("reopened", this.course.reopened());
		model.addAttribute("teamRulings", this.ice.rulings());
		model.addAttribute("panel", this.people.panel());
		model.addAttribute("guesses", this.people.guesses());
		model.addAttribute("setAside", this.course.setAside());
		model.addAttribute("bound", this.people.bound());
		model.addAttribute("alarms", this.people.alarms());
		model.addAttribute("standingNow", this.course.standing());
		model.addAttribute("onIce", StandPage.onIce(this.ice.decision()));
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
		Map<String, LivePart> all = new HashMap<>(Map.of("order", this.course.order(), "decision", this.ice.decision(),
				"paper", this.course.paper(), "rulings", this.ice.rulings(), "reopened", this.course.reopened(),
				"panel", this.people.panel(), "guesses", this.people.guesses()));
		all.put("few", this.course.few());
		all.put("setAside", this.course.setAside());
		all.put("bound", this.people.bound());
		all.put("alarms", this.people.alarms());
		all.put("standing", this.course.standing());
		if (this.ice.decision().now() != null) {
			all.putAll(Map.of("clock", this.ice.clock(), "seats", this.ice.seats(), "told", this.ice.told()));
		}
		if (!this.ice.deductions().equals(DeductionsPart.NONE)) {
			all.put("deductions", this.ice.deductions());
		}
		return all;
	}

	/** What has become of the performances of the segment. */
	record Course(OrderPart order, FewPart few, ReopenedPart reopened, SetAsidePart setAside, PaperPart paper,
			StandingPart standing) {
	}

	/** What there is of the performance on the ice. */
	record Ice(ClockPart clock, SeatsPart seats, ToldPart told, DeductionsPart deductions, DecisionPart decision,
			RulingsPart rulings) {
	}

	/** Who sits on the panel, who wants to, and what they have to know. */
	record People(PanelPart panel, GuessesPart guesses, BoundPart bound, AlarmsPart alarms) {
	}

}
