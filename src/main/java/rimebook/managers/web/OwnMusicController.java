package rimebook.managers.web;

import java.util.Locale;
import java.util.Objects;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

import rimebook.accounts.TeamLinks;
import rimebook.competition.SegmentId;
import rimebook.managers.OwnMusic;
import rimebook.music.MusicView;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** The team's music: handed in, played, replaced until the deadline. */
@Controller
@RequestMapping("/manager/music")
class OwnMusicController {

	private final OwnMusic music;

	private final OwnFrame frame;

	OwnMusicController(OwnMusic music, OwnFrame frame) {
		this.music = music;
		this.frame = frame;
	}

	@GetMapping
	String all(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		about(pass, "/manager/music", request, response, language, model);
		model.addAttribute("rows", this.music.of(pass));
		return "managers/music";
	}

	@GetMapping("/{segment}")
	String form(TeamLinks.Pass pass, @PathVariable SegmentId segment, @ModelAttribute("form") FileForm form,
			HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		return page(pass, segment, request, response, language, model);
	}

	@PostMapping("/{segment}")
	String handIn(TeamLinks.Pass pass, @PathVariable SegmentId segment, @ModelAttribute("form") FileForm form,
			BindingResult errors, Actor actor, HttpServletRequest request, HttpServletResponse response,
			Locale language, Model model) {
		if (Submission.refused(errors, () -> handIn(pass, segment, form.getFile(), actor))) {
			return page(pass, segment, request, response, language, model);
		}
		return "redirect:/manager/music?done=music";
	}

	private void handIn(TeamLinks.Pass pass, SegmentId segment, @Nullable MultipartFile sent, Actor actor) {
		if (sent == null) {
			throw new RuleViolationException("music-missing", "file", Sentence.of("music.missing"));
		}
		this.music.handIn(pass, segment, sent, sent.getSize(),
				Objects.requireNonNullElse(sent.getOriginalFilename(), ""), actor);
	}

	@PostMapping("/{segment}/on-site")
	String onSite(TeamLinks.Pass pass, @PathVariable SegmentId segment,
			@RequestParam(defaultValue = "false") boolean onSite, Actor actor) {
		this.music.onSite(pass, segment, onSite, actor);
		return "redirect:/manager/music?done=" + (onSite ? "on-site" : "not-on-site");
	}

	/** The bytes of a version, whole or in part, as a player asks for them. */
	@GetMapping("/file/{version}")
	ResponseEntity<Resource> file(TeamLinks.Pass pass, @PathVariable MusicView.VersionId version) {
		return this.music.content(pass, version).answer();
	}

	private String page(TeamLinks.Pass pass, SegmentId segment, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		about(pass, "/manager/music/" + segment, request, response, language, model);
		model.addAttribute("row", this.music.of(pass, segment));
		model.addAttribute("most", this.music.mostBytes());
		return "managers/hand-in";
	}

	private void about(TeamLinks.Pass pass, String here, HttpServletRequest request, HttpServletResponse response,
			Locale language, Model model) {
		this.frame.fill(pass, here, request, response, language, model);
		model.addAttribute("until", this.music.until(pass));
		model.addAttribute("refusal", this.music.refusal(pass));
	}

	/** A file, as sent. */
	static class FileForm {

		private @Nullable MultipartFile file;

		public @Nullable MultipartFile getFile() {
			return this.file;
		}

		public void setFile(MultipartFile file) {
			this.file = file;
		}

	}

}
