package rimebook.panels.web;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
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

import rimebook.pages.Choice;
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.panels.InterestView;
import rimebook.panels.KnownNames;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.shared.Actor;

/** The register of officials. */
@Controller
@RequestMapping("/desk/officials")
class OfficialsController {

	private static final String LIST = "redirect:/desk/officials";

	private static final String FORM = "panels/official";

	private final Panels panels;

	private final KnownNames known;

	private final MessageSource messages;

	OfficialsController(Panels panels, KnownNames known, MessageSource messages) {
		this.messages = messages;
		this.panels = panels;
		this.known = known;
	}

	@GetMapping
	String list(@RequestParam(defaultValue = "") String search, Model model) {
		List<OfficialView> officials = this.panels.officials();
		model.addAttribute("search", search);
		model.addAttribute("total", officials.size());
		model.addAttribute("officials", officials.stream().filter((official) -> fits(official, search)).toList());
		return "panels/officials";
	}

	@GetMapping("/new")
	String blank(Model model) {
		model.addAttribute("form", OfficialForm.empty());
		return form(model);
	}

	@PostMapping
	String register(@ModelAttribute("form") OfficialForm form, BindingResult errors, Model model, Actor actor,
			RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.panels.register(form.draft(this.known), actor))) {
			return form(model);
		}
		Notice.give(redirect, "panels.official.registered", Given.text(form.name()));
		return LIST;
	}

	@GetMapping("/{id}")
	String edit(@PathVariable OfficialView.Id id, Model model) {
		model.addAttribute("form", OfficialForm.of(this.panels.official(id)));
		model.addAttribute("interest", InterestForm.empty());
		return page(id, model);
	}

	@PostMapping("/{id}/interests")
	String declare(@PathVariable OfficialView.Id id, @ModelAttribute("interest") InterestForm form,
			BindingResult errors, Model model, Actor actor, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.panels.declare(form.declared(id, this.known), actor))) {
			model.addAttribute("form", OfficialForm.of(this.panels.official(id)));
			return page(id, model);
		}
		String team = Given.text(form.team());
		Notice.give(redirect, "panels.interests.declared", team.isBlank() ? Given.text(form.otherTeam()) : team);
		return LIST + "/" + id;
	}

	@PostMapping("/{id}/interests/{interest}/removal")
	String remove(@PathVariable OfficialView.Id id, @PathVariable InterestView.Id interest, Actor actor,
			RedirectAttributes redirect) {
		this.panels.removeInterest(id, interest, actor);
		Notice.give(redirect, "panels.interests.removed");
		return LIST + "/" + id;
	}

	private String page(OfficialView.Id id, Model model) {
		model.addAttribute("interests", this.panels.interests(id));
		model.addAttribute("kinds", InterestView.Kind.values());
		model.addAttribute("teams", choices("panels.interests.not-listed", this.known.teams()));
		return form(model);
	}

	private String form(Model model) {
		model.addAttribute("clubs", choices("panels.official.no-club", this.known.clubs()));
		return FORM;
	}

	/** The names behind a line that stands for none of them. */
	private List<Choice> choices(String none, List<String> names) {
		String words = this.messages.getMessage(none, null, LocaleContextHolder.getLocale());
		return Stream.concat(Stream.of(new Choice("", words)), names.stream().map((name) -> new Choice(name, name)))
			.toList();
	}

	@PostMapping("/{id}")
	String change(@PathVariable OfficialView.Id id, @ModelAttribute("form") OfficialForm form, BindingResult errors,
			Model model, Actor actor, RedirectAttributes redirect) {
		if (Submission.refused(errors,
				() -> this.panels.change(id, form.versionRead(), form.draft(this.known), actor))) {
			model.addAttribute("interest", InterestForm.empty());
			return page(id, model);
		}
		Notice.give(redirect, "panels.official.changed", Given.text(form.name()));
		return LIST;
	}

	/** Every word of the search stands somewhere in the line. */
	private static boolean fits(OfficialView official, String search) {
		String line = String.join(" ", official.name(), official.club(), official.qualification())
			.toLowerCase(Locale.ROOT);
		return Stream.of(search.strip().toLowerCase(Locale.ROOT).split("\\s+")).allMatch(line::contains);
	}

}
