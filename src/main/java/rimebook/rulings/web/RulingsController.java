package rimebook.rulings.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.pages.DeskEntry;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.shared.Actor;

/** Questions and rulings at the desk: listed, asked by secretary or referee, read. */
@Controller
@RequestMapping("/desk/rulings")
class RulingsController {

	static final String REFEREE = "REFEREE";

	private static final String ASK = "rulings/ask";

	private final Rulings rulings;

	private final RulingsPages pages;

	RulingsController(Rulings rulings, RulingsPages pages) {
		this.rulings = rulings;
		this.pages = pages;
	}

	@GetMapping
	String list(@RequestParam(required = false) @Nullable CompetitionId competition,
			@RequestParam(defaultValue = "") String words, @RequestParam(defaultValue = "all") String state,
			Model model) {
		this.pages.list(competition, new RulingsSearch(words, state), model);
		return "rulings/list";
	}

	@GetMapping("/new/{competition}")
	String askForm(@PathVariable CompetitionId competition, @ModelAttribute("form") QuestionForm form, Model model) {
		this.pages.ask(competition, model);
		return ASK;
	}

	@PostMapping("/new/{competition}")
	String ask(@PathVariable CompetitionId competition, @ModelAttribute("form") QuestionForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.rulings.ask(form.asked(), actor))) {
			this.pages.ask(competition, model);
			return ASK;
		}
		Notice.give(redirect, "rulings.ask.asked");
		return "redirect:/desk/rulings?competition=" + competition;
	}

	@GetMapping("/{question}")
	String show(@PathVariable QuestionView.QuestionId question, HttpServletRequest request, Model model) {
		this.pages.question(this.rulings.question(question), model);
		model.addAttribute("mayRule", request.isUserInRole(REFEREE));
		return "rulings/question";
	}

	@Bean
	static DeskEntry rulingsDeskEntry() {
		return new DeskEntry(55, "/desk/rulings", "rulings");
	}

}
