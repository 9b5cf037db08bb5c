package rimebook.entries.web;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicReference;

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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.EntryImport;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.tables.TableFile;

/** Entries of a competition from a file, looked over before anything is written. */
@Controller
@RequestMapping("/desk/entries")
class ImportController {

	private final Competitions competitions;

	private final EntryImport entryImport;

	ImportController(Competitions competitions, EntryImport entryImport) {
		this.competitions = competitions;
		this.entryImport = entryImport;
	}

	@ModelAttribute("competition")
	CompetitionView competition(@PathVariable CompetitionId competition) {
		return this.competitions.competition(competition);
	}

	@ModelAttribute("mostRows")
	int mostRows() {
		return TableFile.MOST_ROWS;
	}

	@GetMapping("/import/{competition}")
	String initImport(Model model) {
		model.addAttribute("importForm", ImportForm.of(""));
		return "entries/import";
	}

	@PostMapping("/import/{competition}")
	String lookOver(@PathVariable CompetitionId competition, ImportForm form, BindingResult result, Model model) {
		AtomicReference<String> text = new AtomicReference<>("");
		if (Submission.refused(result, () -> text.set(form.text(this.entryImport)))) {
			return "entries/import";
		}
		return showOrRefuse(competition, AcceptForm.of(text.get()), model);
	}

	@PostMapping("/import/{competition}/accept")
	String accept(@PathVariable CompetitionId competition, AcceptForm form, BindingResult result, Actor actor,
			Model model, RedirectAttributes redirect) {
		AtomicReference<EntryImport.Outcome> outcome = new AtomicReference<>();
		if (Submission.refused(result,
				() -> outcome.set(this.entryImport.apply(competition, form.csv(), form.answers(), actor)))) {
			return showOrRefuse(competition, form, model);
		}
		Notice.give(redirect, "entries.imported", String.valueOf(outcome.get().entered()),
				String.valueOf(outcome.get().setAside()));
		return "redirect:/desk/competitions/" + competition;
	}

	@GetMapping("/export/{competition}")
	ResponseEntity<byte[]> export(@ModelAttribute("competition") CompetitionView competition) {
		ContentDisposition saved = ContentDisposition.attachment()
			.filename(competition.slug() + "-entries.csv")
			.build();
		return ResponseEntity.ok()
			.contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
			.header(HttpHeaders.CONTENT_DISPOSITION, saved.toString())
			.body(this.entryImport.export(competition.id()).getBytes(StandardCharsets.UTF_8));
	}

	/** A refusal leaves the text in the form, also that of an uploaded file. */
	private String showOrRefuse(CompetitionId competition, AcceptForm form, Model model) {
		ImportForm again = ImportForm.of(form.csv());
		BindingResult second = new BeanPropertyBindingResult(again, "importForm");
		if (Submission.refused(second, () -> show(competition, form, model))) {
			model.addAttribute("importForm", again);
			model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "importForm", second);
			return "entries/import";
		}
		return "entries/preview";
	}

	private void show(CompetitionId competition, AcceptForm form, Model model) {
		EntryImport.Preview preview = this.entryImport.preview(competition, form.csv(), form.others());
		model.addAttribute("preview", preview);
		model.addAttribute("acceptForm", form);
	}

}
