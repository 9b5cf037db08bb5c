package rimebook.accounts.web;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatPrincipal;
import rimebook.accounts.SeatTakeovers;
import rimebook.pages.Device;
import rimebook.pages.Submission;
import rimebook.shared.Required;

/** The page on which a judge's tablet takes its seat. */
@Controller
class JoinController {

	private static final String PAGE = "accounts/join";

	/** Longer than any weekend: a tablet that was switched off is still in its seat. */
	private static final Duration KEPT = Duration.ofDays(7);

	private static final String ASKING = "rimebook-seat-asked";

	private static final Duration ASKED = Duration.ofMinutes(15);

	private final SeatCodes seats;

	private final SeatTakeovers takeovers;

	JoinController(SeatCodes seats, SeatTakeovers takeovers) {
		this.seats = seats;
		this.takeovers = takeovers;
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
	String join(@ModelAttribute("form") JoinForm form, BindingResult errors, Device device,
			@AuthenticationPrincipal @Nullable Object who, HttpServletRequest request, HttpServletResponse response) {
		AtomicReference<SeatCodes.Pairing> pairing = new AtomicReference<>();
		boolean refused = Submission.refused(errors, () -> pairing.set(pair(form, device, who)));
		SeatCodes.Pairing done = pairing.get();
		if (refused || done == null) {
			return PAGE;
		}
		String token = done.token();
		give(done.waiting() ? asking(token, ASKED, request) : cookie(token, request.isSecure()), response);
		return done.waiting() ? "redirect:/judge/waiting" : "redirect:/judge/card";
	}

	private SeatCodes.Pairing pair(JoinForm form, Device device, @Nullable Object who) {
		SeatCodes.Grant held = (who instanceof SeatPrincipal tablet) ? tablet.seat() : null;
		return this.seats.pair(Required.text("code", form.code(), 40), device.description(), held, form.request());
	}

	/** A tablet that waits for the referee's word looks again every few seconds. */
	@GetMapping("/judge/waiting")
	String waiting(@CookieValue(name = ASKING, defaultValue = "") String token, HttpServletRequest request,
			HttpServletResponse response, Model model) {
		SeatTakeovers.Answer state = token.isEmpty() ? SeatTakeovers.Answer.GONE : this.takeovers.look(token);
		if (state == SeatTakeovers.Answer.TAKEN) {
			give(cookie(token, request.isSecure()), response);
			give(asking("", Duration.ZERO, request), response);
			return "redirect:/judge/card";
		}
		if (state == SeatTakeovers.Answer.WAITING) {
			response.setHeader("Refresh", "2");
		}
		model.addAttribute("state", state);
		return "accounts/join-waiting";
	}

	private static void give(ResponseCookie cookie, HttpServletResponse response) {
		response.addHeader(HttpHeaders.SET_COOKIE, cookie.toString());
	}

	/** Of another name than the seat's, since a tablet may have a seat while it asks. */
	private static ResponseCookie asking(String token, Duration kept, HttpServletRequest request) {
		return ResponseCookie.from(ASKING, token)
			.httpOnly(true)
			.secure(request.isSecure())
			.sameSite("Strict")
			.path("/judge")
			.maxAge(kept)
			.build();
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
