package rimebook.documents.web;

import java.io.IOException;
import java.time.Clock;
import java.util.UUID;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.documents.BundleView;
import rimebook.documents.PaperBundles;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/**
 * Everything of a competition on paper: has it made, shows how far it is, gives it out.
 */
@Controller
@RequestMapping("/desk/documents")
class BundlesController {

	private final PaperBundles bundles;

	private final Competitions competitions;

	private final Clock clock;

	BundlesController(PaperBundles bundles, Competitions competitions, Clock clock) {
		this.bundles = bundles;
		this.competitions = competitions;
		this.clock = clock;
	}

	@PostMapping("/{competition}/bundle")
	String ask(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "") String paper,
			@RequestParam(defaultValue = "") String language, Actor actor) {
		PaperChoice choice = PaperChoice.of(paper, language);
		return "redirect:/desk/documents/bundles/"
				+ this.bundles.ask(competition, choice.paper(), choice.locale(), actor);
	}

	@GetMapping("/bundles/{bundle}")
	String show(@PathVariable UUID bundle, Model model) {
		fill(bundle, model);
		return "documents/bundle";
	}

	/** The part that changes, for a page that follows. */
	@GetMapping("/bundles/{bundle}/live")
	String live(@PathVariable UUID bundle, Model model) {
		fill(bundle, model);
		return "documents/bundle :: progress";
	}

	private void fill(UUID id, Model model) {
		BundleView bundle = this.bundles.bundle(id);
		model.addAttribute("bundle", bundle);
		model.addAttribute("stopped", bundle.isStopped(this.clock.instant()));
		model.addAttribute("competition", this.competitions.competition(bundle.order().competition()));
	}

	@GetMapping("/bundles/{bundle}/documents.zip")
	void take(@PathVariable("bundle") UUID id, HttpServletResponse response) throws IOException {
		BundleView bundle = this.bundles.whole(id);
		response.setContentType("application/zip");
		response.setHeader(HttpHeaders.CACHE_CONTROL, CacheControl.noStore().getHeaderValue());
		response.setHeader(HttpHeaders.CONTENT_DISPOSITION,
				ContentDisposition.attachment()
					.filename(this.competitions.competition(bundle.order().competition()).slug() + "-documents.zip")
					.build()
					.toString());
		try {
			this.bundles.write(bundle, response.getOutputStream());
		}
		catch (NotFoundException ex) {
			if (!response.isCommitted()) {
				response.reset();
			}
			throw ex;
		}
	}

}
