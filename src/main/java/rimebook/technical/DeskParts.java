package rimebook.technical;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.ui.Model;

/** All parts of the technical desk that follow by themselves. */
record DeskParts(TechnicalPart.Ice ice, TechnicalPart.Plan plan, TechnicalPart.Called called,
		TechnicalPart.Deducted deducted) {

	void into(Model model) {
		model.addAttribute("ice", this.ice);
		model.addAttribute("plan", this.plan);
		model.addAttribute("called", this.called);
		model.addAttribute("deducted", this.deducted);
	}

	/**
	 * The names of the parts that are no longer as the page shows them.
	 * @param seen the prints on the page, by the name of the part
	 */
	Set<String> changed(Map<String, String> seen) {
		Map<String, TechnicalPart> all = Map.of("ice", this.ice, "plan", this.plan, "called", this.called, "deducted",
				this.deducted);
		return all.entrySet()
			.stream()
			.filter((part) -> !part.getValue().print().equals(seen.get(part.getKey())))
			.map(Map.Entry::getKey)
			.collect(Collectors.toSet());
	}

}
