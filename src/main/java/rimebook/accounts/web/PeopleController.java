package rimebook.accounts.web;

import java.util.EnumSet;
import java.util.Set;

import jakarta.validation.Valid;
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

import rimebook.accounts.People;
import rimebook.accounts.PersonView;
import rimebook.accounts.Role;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** The administrator's list of people, and a page for each. */
@Controller
@RequestMapping("/desk/people")
class PeopleController {

	private final People people;

	PeopleController(People people) {
		this.people = people;
	}

	@ModelAttribute("allRoles")
	Set<Role> allRoles() {
		return EnumSet.complementOf(EnumSet.of(Role.JUDGE));
	}

	@GetMapping
	String list(Model model) {
		model.addAttribute("people", this.people.all());
		return "accounts/people";
	}

	@GetMapping("/new")
	String initAdding(Model model) {
		model.addAttribute("form", PersonForm.empty());
		return "accounts/person-new";
	}

	@PostMapping("/new")
	String add(@Valid @ModelAttribute("form") PersonForm form, BindingResult result, Actor actor,
			RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.people.invite(form.draft(), actor))) {
			return "accounts/person-new";
		}
		Notice.give(redirect, "accounts.person.added", form.displayName());
		return "redirect:/desk/people";
	}

	@GetMapping("/{id}")
	String initChange(@PathVariable PersonView.Id id, Model model) {
		model.addAttribute("person", this.people.person(id));
		model.addAttribute("form", PersonForm.of(this.people.person(id)));
		return "accounts/person";
	}

	@PostMapping("/{id}")
	String change(@PathVariable PersonView.Id id, @ModelAttribute("form") PersonForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result,
				() -> this.people.change(id, form.version(), form.displayName(), form.roles(), actor))) {
			model.addAttribute("person", this.people.person(id));
			return "accounts/person";
		}
		Notice.give(redirect, "accounts.person.changed", form.displayName());
		return "redirect:/desk/people";
	}

	@GetMapping("/{id}/password")
	String initPassword(@PathVariable PersonView.Id id, Model model) {
		model.addAttribute("person", this.people.person(id));
		model.addAttribute("form", PersonForm.empty());
		return "accounts/person-password";
	}

	@PostMapping("/{id}/password")
	String setPassword(@PathVariable PersonView.Id id, @ModelAttribute("form") PersonForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		PersonView person = this.people.person(id);
		if (Submission.refused(result, () -> this.people.setPassword(id, form.password(), actor))) {
			model.addAttribute("person", person);
			return "accounts/person-password";
		}
		Notice.give(redirect, "accounts.person.password-set", person.displayName());
		return "redirect:/desk/people";
	}

	@PostMapping("/{id}/shut-out")
	String shutOut(@PathVariable PersonView.Id id, @RequestParam int version, Actor actor,
			RedirectAttributes redirect) {
		Notice.give(redirect, "accounts.person.shut-out", this.people.deactivate(id, version, actor).displayName());
		return "redirect:/desk/people";
	}

	@PostMapping("/{id}/let-in")
	String letIn(@PathVariable PersonView.Id id, @RequestParam int version, Actor actor, RedirectAttributes redirect) {
		Notice.give(redirect, "accounts.person.let-in", this.people.reactivate(id, version, actor).displayName());
		return "redirect:/desk/people";
	}

}
