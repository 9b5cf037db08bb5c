package rimebook.music.web;

import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.entries.Renaming;
import rimebook.entries.TeamView;
import rimebook.music.SpokenNames;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** How a team says its name: handed in, heard, replaced and removed. */
@Controller
@RequestMapping("/desk/music/name/{team}")
class SpokenNameController {

	private final SpokenNames names;

	private final Renaming teams;

	SpokenNameController(SpokenNames names, Renaming teams) {
		this.names = names;
		this.teams = teams;
	}

	@GetMapping
	String show(@PathVariable TeamView.Id team, @ModelAttribute("form") NameForm form, Model model) {
		return page(team, model);
	}

	@PostMapping
	String record(@PathVariable TeamView.Id team, @ModelAttribute("form") NameForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.names.record(form.order(team), actor))) {
			return page(team, model);
		}
		Notice.give(redirect, "music.name.recorded", this.teams.team(team).team().name());
		return "redirect:/desk/music/name/" + team;
	}

	@PostMapping("/removal")
	String remove(@PathVariable TeamView.Id team, @ModelAttribute("form") NameForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.names.remove(team, form.getSeen(), actor))) {
			return page(team, model);
		}
		Notice.give(redirect, "music.name.removed", this.teams.team(team).team().name());
		return "redirect:/desk/music/name/" + team;
	}

	@GetMapping("/sound")
	ResponseEntity<byte[]> sound(@PathVariable TeamView.Id team) {
		return this.names.content(team).answer();
	}

	private String page(TeamView.Id team, Model model) {
		model.addAttribute("team", this.teams.team(team).team());
		model.addAttribute("name", this.names.of(team).orElse(null));
		model.addAttribute("most", SpokenNames.MOST_BYTES);
		return "music/name";
	}

	/** A recording, as sent. */
	static class NameForm {

		private @Nullable MultipartFile file;

		private String seen = "";

		SpokenNames.Recording order(TeamView.Id team) {
			MultipartFile sent = this.file;
			if (sent == null) {
				throw new RuleViolationException("music-missing", "file", Sentence.of("music.missing"));
			}
			return new SpokenNames.Recording(team, this.seen, sent, sent.getSize());
		}

		public @Nullable MultipartFile getFile() {
			return this.file;
		}

		public void setFile(MultipartFile file) {
			this.file = file;
		}

		public String getSeen() {
			return this.seen;
		}

		public void setSeen(String seen) {
			this.seen = seen;
		}

	}

}
