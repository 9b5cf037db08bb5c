package rimebook.managers.web;

import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import java.util.Set;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.accounts.TeamLinks;
import rimebook.managers.OwnTeam;
import rimebook.pages.LinkCookie;
import rimebook.wording.Figures;
import rimebook.wording.Languages;

/**
 * What every page of a team's managers shows around its content. What was done is told by
 * a word in the address, since there is no session that could keep it.
 */
@Component
class OwnFrame {

	private static final Set<String> DONE = Set.of("added", "kept", "removed", "agreed", "disagreed", "contact-added",
			"contact-removed", "elements", "music", "on-site", "not-on-site", "asked", "filed", "refused", "name",
			"recorded", "recording-removed");

	private final OwnTeam own;

	private final Clock clock;

	OwnFrame(OwnTeam own, Clock clock) {
		this.own = own;
		this.clock = clock;
	}

	/**
	 * Put it into the model.
	 * @param here the address of the page as it can be asked for again
	 */
	OwnTeam.About fill(TeamLinks.Pass pass, String here, HttpServletRequest request, HttpServletResponse response,
			Locale language, Model model) {
		OwnTeam.About about = this.own.about(pass);
		model.addAttribute("own", about);
		model.addAttribute("zone", about.competition().zone());
		String done = request.getParameter("done");
		model.addAttribute("done", (done != null && DONE.contains(done)) ? done : "");
		bare(here, request, response, language, model);
		return about;
	}

	/** The same for somebody who has no link that is good. */
	void bare(String here, HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		model.addAttribute("here", here);
		model.addAttribute("words", new Figures(language));
		model.addAttribute("languages", Languages.SPOKEN);
		model.addAttribute("now", this.clock.instant());
		if (request.getParameter("lang") != null) {
			LinkCookie.LANGUAGE_OF_TEAM.give(request, response, language.getLanguage(), this.clock.instant(),
					this.clock.instant().plus(Duration.ofDays(180)));
		}
	}

}
