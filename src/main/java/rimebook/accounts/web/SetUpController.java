package rimebook.accounts.web;

import java.util.Set;

import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.SetUpLink;
import rimebook.pages.Device;
import rimebook.pages.Notice;
import rimebook.pages.Submission;

/** The page behind the set-up link: makes the first administrator, once. */
@Controller
class SetUpController {

	private final SetUpLink link;

	SetUpController(SetUpLink link) {
		this.link = link;
	}

	@GetMapping("/set-up/{token}")
	String show(@PathVariable String token, Model model) {
		this.link.check(token);
		model.addAttribute("form", PersonForm.empty());
		return "accounts/set-up";
	}

	@PostMapping("/set-up/{token}")
	String create(@PathVariable String token, @Valid @ModelAttribute("form") PersonForm form, BindingResult result,
			Device device, RedirectAttributes redirect) {
		this.link.check(token);
		if (Submission.refused(result, () -> this.link.redeem(token, first(form), device.description()))) {
			return "accounts/set-up";
		}
		Notice.give(redirect, "accounts.set-up.done");
		redirect.addFlashAttribute("signInName", form.signInName());
		return "redirect:/sign-in";
	}

	private static DraftPerson first(PersonForm form) {
		return new DraftPerson(form.signInName(), form.displayName(), Set.of(), form.password());
	}

}
