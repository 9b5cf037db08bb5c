package rimebook.accounts.web;

import java.time.Duration;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatPrincipal;
import rimebook.pages.Device;
import rimebook.pages.Submission;
import rimebook.shared.Required;

/** The page on which a judge's tablet takes its seat. */
@Controller
class JoinController {

	private static final String PAGE = "accounts/join";

	/** Longer than any weekend: a tablet that was switched off is still in its seat. */
	private static final Duration KEPT = Duration.ofDays(7);

	private final SeatCodes seats;

	JoinController(SeatCodes seats) {
		this.seats = seats;
	}

	@ModelAttribute("held")
	@Nullable String held(@AuthenticationPrincipal @Nullable Object who) {
		return (who instanceof SeatPrincipal tablet) ? tablet.getName() : null;
	}

	@GetMapping("/judge")
	String ask(@ModelAttribute("form") JoinForm form) {
		return PAGE;
	}

	@PostMapping("/judge")
	String join(@ModelAttribute("form") JoinForm form, BindingResult errors, Device device, HttpServletRequest request,
			HttpServletResponse response, Model model) {
		if (Submission.refused(errors, () -> response.addHeader(HttpHeaders.SET_COOKIE,
				cookie(token(form, device), request.isSecure()).toString()))) {
			return PAGE;
		}
		return "redirect:/judge/card";
	}

	private String token(JoinForm form, Device device) {
		return this.seats.pair(Required.text("code", form.code(), 40), device.description()).token();
	}

	private static ResponseCookie cookie(String token, boolean secure) {
		return ResponseCookie.from("rimebook-seat", token)
			.httpOnly(true)
			.secure(secure)
			.sameSite("Strict")
			.path("/")
			.maxAge(KEPT)
			.build();
	}

}
