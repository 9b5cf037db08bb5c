package rimebook.rosters.web;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.pages.Submission;
import rimebook.rosters.RosterImport;
import rimebook.shared.Actor;

/**
 * Rosters of a competition from a file, looked over before anything is written, and as
 * one.
 */
@Controller
@RequestMapping("/desk/rosters/files/{competition}")
class RosterImportController {

	/** So many bad rows are shown; who has more of them mends the file. */
	private static final int SHOWN = 200;

	private final Competitions competitions;

	private final RosterImport rosters;

	private final RosterImportJobs jobs;

	RosterImportController(Competitions competitions, RosterImport rosters, RosterImportJobs jobs) {
		this.competitions = competitions;
		this.rosters = rosters;
		this.jobs = jobs;
	}

	@ModelAttribute("competition")
	CompetitionView competition(@PathVariable CompetitionId competition) {
		return this.competitions.competition(competition);
	}

	@ModelAttribute("mostRows")
	int mostRows() {
		return RosterImport.MOST_ROWS;
	}

	@GetMapping
	String ask(Model model) {
		model.addAttribute("importForm", RosterImportForm.of(""));
		return "rosters/import";
	}

	@PostMapping
	String lookOver(@PathVariable CompetitionId competition, @ModelAttribute("importForm") RosterImportForm form,
			BindingResult result, Model model) {
		AtomicReference<String> text = new AtomicReference<>("");
		if (Submission.refused(result, () -> text.set(form.text(this.rosters)))) {
			return "rosters/import";
		}
		return showOrRefuse(competition, RosterImportForm.of(text.get()), model);
	}

	/** Written beside everything else: thousands of rows take their time. */
	@PostMapping("/acceptance")
	String accept(@PathVariable CompetitionId competition, @ModelAttribute("importForm") RosterImportForm form,
			BindingResult result, Actor actor, Model model) {
		AtomicReference<RosterImportJob> job = new AtomicReference<>();
		if (Submission.refused(result, () -> job.set(this.jobs.begin(competition, form,
				this.rosters.preview(competition, form.csv(), form.others()).rows().size() - form.lines().size(),
				actor)))) {
			return showOrRefuse(competition, form, model);
		}
		return "redirect:/desk/rosters/files/" + competition + "/writing/" + job.get().id();
	}

	/**
	 * Asks to be loaded again until all is written, so it needs no script. One that
	 * stopped shows the file again with what is there by now, so that it can go on.
	 */
	@GetMapping("/writing/{job}")
	String progress(@PathVariable CompetitionId competition, @PathVariable UUID job, Model model,
			HttpServletResponse response) {
		RosterImportJob known = this.jobs.job(competition, job).orElse(null);
		model.addAttribute("job", known);
		model.addAttribute("portion", RosterImport.AT_ONCE);
		if (known == null) {
			return "rosters/writing-lost";
		}
		RosterImportForm form = known.form();
		if (known.getRefusal() != null && form != null) {
			return showOrRefuse(competition, form, model);
		}
		if (known.isOpen()) {
			response.setHeader("Refresh", "1");
		}
		return "rosters/writing";
	}

	@GetMapping("/rosters.csv")
	ResponseEntity<byte[]> export(@ModelAttribute("competition") CompetitionView competition) {
		ContentDisposition saved = ContentDisposition.attachment()
			.filename(competition.slug() + "-rosters.csv")
			.build();
		return ResponseEntity.ok()
			.contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
			.header(HttpHeaders.CONTENT_DISPOSITION, saved.toString())
			.header(HttpHeaders.CACHE_CONTROL, "no-store")
			.body(this.rosters.export(competition.id()).getBytes(StandardCharsets.UTF_8));
	}

	/** A refusal leaves the text in the form, also that of an uploaded file. */
	private String showOrRefuse(CompetitionId competition, RosterImportForm form, Model model) {
		BindingResult second = new BeanPropertyBindingResult(form, "importForm");
		boolean refused = Submission.refused(second, () -> {
			RosterImport.Preview preview = this.rosters.preview(competition, form.csv(), form.others());
			model.addAttribute("preview", preview);
			model.addAttribute("bad", preview.bad().stream().limit(SHOWN).toList());
			model.addAttribute("good", preview.good().stream().limit(SHOWN).toList());
		});
		if (refused) {
			model.addAttribute("importForm", form);
			model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "importForm", second);
			return "rosters/import";
		}
		model.addAttribute("acceptForm", form);
		return "rosters/preview";
	}

}
