package rimebook.managers.web;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.accounts.LinkRefused;
import rimebook.accounts.LinkStanding;
import rimebook.accounts.TeamLinks;
import rimebook.managers.OwnTeam;
import rimebook.pages.LinkCookie;

/**
 * The page of a team behind its link: what is missing and until when. The link holds the
 * token behind a hash sign; the page sends it once, as a form does, and a cookie keeps it
 * from then on. Whoever has no script pastes it.
 */
@Controller
@RequestMapping("/manager")
class OwnTeamController {

	private final TeamLinks links;

	private final OwnTeam own;

	private final OwnFrame frame;

	private final Clock clock;

	OwnTeamController(TeamLinks links, OwnTeam own, OwnFrame frame, Clock clock) {
		this.links = links;
		this.own = own;
		this.frame = frame;
		this.clock = clock;
	}

	@GetMapping
	String show(HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		Optional<String> token = LinkCookie.OF_TEAM.read(request);
		if (token.isEmpty()) {
			return door("", request, response, language, model);
		}
		try {
			TeamLinks.Pass pass = this.links.pass(token.get());
			this.frame.fill(pass, "/manager", request, response, language, model);
			model.addAttribute("missing", this.own.missing(pass));
			model.addAttribute("told", this.own.told(pass).orElse(null));
			model.addAttribute("pass", pass);
			return "managers/team";
		}
		catch (LinkRefused ex) {
			LinkCookie.OF_TEAM.take(request, response);
			return refuse(ex.standing(), request, response, language, model);
		}
	}

	@PostMapping
	String open(@RequestParam(defaultValue = "") String token, HttpServletRequest request, HttpServletResponse response,
			Locale language, Model model) {
		String typed = LinkCookie.bare(token);
		try {
			TeamLinks.Pass pass = this.links.open(typed);
			LinkCookie.OF_TEAM.give(request, response, typed, this.clock.instant(), pass.expiresAt());
			return "redirect:/manager";
		}
		catch (LinkRefused ex) {
			return refuse(ex.standing(), request, response, language, model);
		}
	}

	/** This device forgets the link; whoever has it can open it again. */
	@PostMapping("/leave")
	void leave(HttpServletRequest request, HttpServletResponse response) {
		LinkCookie.OF_TEAM.take(request, response);
		response.setStatus(HttpStatus.SEE_OTHER.value());
		response.setHeader(HttpHeaders.LOCATION, request.getContextPath() + LinkCookie.OF_TEAM.path());
	}

	private String refuse(LinkStanding standing, HttpServletRequest request, HttpServletResponse response,
			Locale language, Model model) {
		response.setStatus(((standing == LinkStanding.UNKNOWN) ? HttpStatus.NOT_FOUND : HttpStatus.GONE).value());
		return door(standing.name().toLowerCase(Locale.ROOT), request, response, language, model);
	}

	private String door(String standing, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		this.frame.bare("/manager", request, response, language, model);
		model.addAttribute("standing", standing);
		return "managers/open";
	}

}
