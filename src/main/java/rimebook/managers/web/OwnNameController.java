package rimebook.managers.web;

import java.util.Locale;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

import rimebook.accounts.TeamLinks;
import rimebook.managers.OwnName;
import rimebook.music.SpokenNames;
import rimebook.pages.Given;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * How the team's name is said. A recording goes where music does, since only there files
 * of managers are taken.
 */
@Controller
@RequestMapping("/manager")
class OwnNameController {

	private static final String PAGE = "managers/name";

	private final OwnName names;

	private final OwnFrame frame;

	OwnNameController(OwnName names, OwnFrame frame) {
		this.names = names;
		this.frame = frame;
	}

	@GetMapping("/name")
	String name(TeamLinks.Pass pass, @ModelAttribute("recordingForm") RecordingForm recording,
			HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		return page(pass, request, response, language, model);
	}

	@PostMapping("/name")
	String say(TeamLinks.Pass pass, @ModelAttribute("nameForm") NameForm form, BindingResult result,
			@ModelAttribute("recordingForm") RecordingForm recording, @RequestParam(defaultValue = "0") int version,
			Actor actor, HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> this.names.say(pass, version, Given.text(form.spokenAs()), actor))) {
			return page(pass, request, response, language, model);
		}
		return "redirect:/manager?done=name";
	}

	@PostMapping("/music/name")
	String record(TeamLinks.Pass pass, @ModelAttribute("recordingForm") RecordingForm form, BindingResult result,
			Actor actor, HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> record(pass, form, actor))) {
			return page(pass, request, response, language, model);
		}
		return "redirect:/manager/name?done=recorded";
	}

	private void record(TeamLinks.Pass pass, RecordingForm form, Actor actor) {
		MultipartFile sent = form.getFile();
		if (sent == null) {
			throw new RuleViolationException("music-missing", "file", Sentence.of("music.missing"));
		}
		this.names.record(pass, form.getSeen(), sent, sent.getSize(), actor);
	}

	@PostMapping("/name/removal")
	String remove(TeamLinks.Pass pass, @ModelAttribute("recordingForm") RecordingForm form, BindingResult result,
			Actor actor, HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> this.names.remove(pass, form.getSeen(), actor))) {
			return page(pass, request, response, language, model);
		}
		return "redirect:/manager/name?done=recording-removed";
	}

	@GetMapping("/name/sound")
	ResponseEntity<byte[]> sound(TeamLinks.Pass pass) {
		return this.names.content(pass).answer();
	}

	private String page(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		this.frame.fill(pass, "/manager/name", request, response, language, model);
		model.addAttribute("team", this.names.of(pass));
		model.addAttribute("recording", this.names.recording(pass).orElse(null));
		model.addAttribute("most", SpokenNames.MOST_BYTES);
		if (!model.containsAttribute("nameForm")) {
			model.addAttribute("nameForm", new NameForm(this.names.of(pass).team().spokenAs()));
		}
		return PAGE;
	}

	/** How the name is said, as typed. */
	record NameForm(@Nullable String spokenAs) {
	}

	/** A recording, as sent. */
	static class RecordingForm {

		private @Nullable MultipartFile file;

		private String seen = "";

		public @Nullable MultipartFile getFile() {
			return this.file;
		}

		public void setFile(MultipartFile file) {
			this.file = file;
		}

		/** The digest of the recording that was seen, empty for none. */
		public String getSeen() {
			return this.seen;
		}

		public void setSeen(String seen) {
			this.seen = seen;
		}

	}

}
