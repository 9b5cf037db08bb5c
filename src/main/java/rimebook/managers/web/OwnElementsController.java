package rimebook.managers.web;

import java.util.List;
import java.util.Locale;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.accounts.TeamLinks;
import rimebook.competition.SegmentId;
import rimebook.managers.OwnElements;
import rimebook.managers.OwnTeam;
import rimebook.pages.Given;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/**
 * What the team means to skate. Looking for an element and taking it are buttons of the
 * same form, so that nothing typed is lost and no script is needed.
 */
@Controller
@RequestMapping("/manager/elements")
class OwnElementsController {

	private final OwnElements elements;

	private final OwnFrame frame;

	OwnElementsController(OwnElements elements, OwnFrame frame) {
		this.elements = elements;
		this.frame = frame;
	}

	@GetMapping
	String all(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		OwnTeam.About about = this.frame.fill(pass, "/manager/elements", request, response, language, model);
		model.addAttribute("plans",
				about.takingPlace().stream().map((one) -> this.elements.of(pass, one.id(), language)).toList());
		return "managers/elements";
	}

	@GetMapping("/{segment}")
	String form(TeamLinks.Pass pass, @PathVariable SegmentId segment, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		OwnElements.Plan plan = this.elements.of(pass, segment, language);
		model.addAttribute("planForm", new PlanForm(codes(plan), ""));
		return page(pass, segment, List.of(), request, response, language, model);
	}

	/**
	 * Keep the plan, or look for an element, or take one that was found.
	 * @param take the code to be put behind the others, empty for none
	 * @param act "find" to look for what was typed
	 */
	@PostMapping("/{segment}")
	String plan(TeamLinks.Pass pass, @PathVariable SegmentId segment, @ModelAttribute("planForm") PlanForm form,
			BindingResult result, @RequestParam(defaultValue = "") String take,
			@RequestParam(defaultValue = "") String act, @RequestParam(defaultValue = "0") int version, Actor actor,
			HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		if (!take.isEmpty() || act.equals("find")) {
			String codes = (form.typed() + (take.isEmpty() ? "" : "\n" + take)).strip();
			model.addAttribute("planForm", new PlanForm(codes, Given.text(form.find())));
			model.addAttribute("seen", version);
			return page(pass, segment, this.elements.find(pass, Given.text(form.find()), language), request, response,
					language, model);
		}
		if (Submission.refused(result, () -> this.elements.plan(pass, segment, form.typed(), version, actor))) {
			return page(pass, segment, List.of(), request, response, language, model);
		}
		return "redirect:/manager/elements?done=elements";
	}

	private String page(TeamLinks.Pass pass, SegmentId segment, List<OwnElements.Element> found,
			HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		OwnElements.Plan plan = this.elements.of(pass, segment, language);
		this.frame.fill(pass, "/manager/elements/" + segment, request, response, language, model);
		model.addAttribute("plan", plan);
		model.addAttribute("found", found);
		if (!model.containsAttribute("seen")) {
			model.addAttribute("seen", plan.version());
		}
		return "managers/plan";
	}

	private static String codes(OwnElements.Plan plan) {
		return String.join("\n", plan.elements().stream().map(OwnElements.Element::code).toList());
	}

	/**
	 * A plan as typed.
	 *
	 * @param find what is looked for in the table of values
	 */
	record PlanForm(@Nullable String codes, @Nullable String find) {

		String typed() {
			return Given.text(this.codes);
		}

	}

}
