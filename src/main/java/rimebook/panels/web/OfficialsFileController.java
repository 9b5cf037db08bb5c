package rimebook.panels.web;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.panels.OfficialImport;
import rimebook.shared.Actor;
import rimebook.tables.TableFile;

/** Officials from a file, looked over before anything is written. */
@Controller
@RequestMapping("/desk/officials/import")
class OfficialsFileController {

	private static final String FORM = "panels/import";

	private final OfficialImport officials;

	OfficialsFileController(OfficialImport officials) {
		this.officials = officials;
	}

	@ModelAttribute("mostRows")
	int mostRows() {
		return TableFile.MOST_ROWS;
	}

	@GetMapping
	String blank(Model model) {
		model.addAttribute("form", OfficialsFile.of(""));
		return FORM;
	}

	@PostMapping
	String lookOver(@ModelAttribute("form") OfficialsFile form, BindingResult errors, Model model) {
		AtomicReference<String> text = new AtomicReference<>("");
		if (Submission.refused(errors, () -> text.set(form.text()))) {
			return FORM;
		}
		return preview(text.get(), form, model);
	}

	@PostMapping("/accept")
	String accept(@ModelAttribute("form") OfficialsFile form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		AtomicInteger added = new AtomicInteger();
		if (Submission.refused(errors, () -> added.set(this.officials.apply(form.text(), form.lines(), actor)))) {
			return preview(form.text(), form, model);
		}
		Notice.give(redirect, "panels.import.added", String.valueOf(added.get()));
		return "redirect:/desk/officials";
	}

	/**
	 * The rows as they would be taken; the form with its text where it cannot be read.
	 */
	private String preview(String text, OfficialsFile form, Model model) {
		model.addAttribute("text", text);
		OfficialsFile again = OfficialsFile.of(text);
		BindingResult reading = new BeanPropertyBindingResult(again, "form");
		if (Submission.refused(reading, () -> model.addAttribute("preview", this.officials.preview(text)))) {
			model.addAttribute("form", again);
			model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", reading);
			return FORM;
		}
		return "panels/import-preview";
	}

}
