package rimebook.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.web.authentication.logout.SecurityContextLogoutHandler;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.accounts.OwnPassword;
import rimebook.accounts.SignedIn;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/**
 * The page on which people replace their own password. Whoever has one that somebody else
 * chose sees no other page of the desk before.
 */
@Controller
@RequestMapping("/desk/own-password")
class OwnPasswordController {

	private static final String PAGE = "accounts/own-password";

	private final OwnPassword passwords;

	OwnPasswordController(OwnPassword passwords) {
		this.passwords = passwords;
	}

	@ModelAttribute("first")
	boolean first(@AuthenticationPrincipal Object who) {
		return who instanceof SignedIn person && person.mustChoosePassword();
	}

	@GetMapping
	String show(Model model) {
		model.addAttribute("form", new OwnPasswordForm("", "", ""));
		return PAGE;
	}

	@PostMapping
	String change(@ModelAttribute("form") OwnPasswordForm form, BindingResult errors, Actor actor,
			Authentication person, HttpServletRequest request, HttpServletResponse response) {
		if (Submission.refused(errors,
				() -> this.passwords.change(person, form.current(), form.password(), form.again(), actor))) {
			return PAGE;
		}
		new SecurityContextLogoutHandler().logout(request, response, person);
		return "redirect:/sign-in?changed";
	}

}
