package rimebook.accounts.web;

import java.util.List;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;

import rimebook.accounts.OpenHouse;

/** The page on which people sign in; what they type is read by the door itself. */
@Controller
class SignInController {

	private final ObjectProvider<OpenHouse> openHouses;

	SignInController(ObjectProvider<OpenHouse> openHouses) {
		this.openHouses = openHouses;
	}

	@ModelAttribute("offers")
	List<OpenHouse.Offer> offers() {
		return this.openHouses.orderedStream().flatMap((house) -> house.offers().stream()).toList();
	}

	@GetMapping("/sign-in")
	String signIn() {
		return "accounts/sign-in";
	}

	/**
	 * Where the door leads whoever it refused; what was typed stays, but for the
	 * password.
	 */
	@PostMapping("/sign-in/refused")
	@ResponseStatus(HttpStatus.UNPROCESSABLE_CONTENT)
	String refused(@RequestParam(defaultValue = "") String signInName, Model model) {
		model.addAttribute("refused", true);
		model.addAttribute("signInName", signInName);
		return "accounts/sign-in";
	}

}
