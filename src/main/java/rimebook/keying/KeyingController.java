package rimebook.keying;

import java.util.List;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.SegmentId;
import rimebook.pages.Choice;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.shared.Actor;
import rimebook.stand.DeductionRow;
import rimebook.tabulation.points.JudgedElement;

/**
 * The keying desk in points judging: what was called and noted on paper for the team on
 * the ice is keyed in here, one page for each paper. Closing stays with the referee's
 * stand.
 */
@Controller
@RequestMapping("/desk/keying/{segment}")
class KeyingController {

	private static final String ELEMENTS = "keying/elements";

	private static final String DEDUCTIONS = "keying/deductions";

	private static final String PAGE = "page";

	private final KeyingComposer pages;

	private final ElementCalls calls;

	private final DeductionNotes deductions;

	KeyingController(KeyingComposer pages, ElementCalls calls, DeductionNotes deductions) {
		this.pages = pages;
		this.calls = calls;
		this.deductions = deductions;
	}

	@ModelAttribute(PAGE)
	KeyingPage page(@PathVariable SegmentId segment, @RequestParam(defaultValue = "") String performance, Actor actor) {
		return this.pages.byPoints(segment, performance, actor);
	}

	@ModelAttribute("worths")
	JudgedElement.ElementWorth[] worths() {
		return JudgedElement.ElementWorth.values();
	}

	@GetMapping("/elements")
	String elements(@ModelAttribute(name = PAGE, binding = false) KeyingPage page, Model model) {
		model.addAttribute("form", ElementsForm.of(page));
		return ELEMENTS;
	}

	/** Only makes room in the form; nothing is sent. */
	@PostMapping(path = "/elements", params = "insert")
	String insert(@ModelAttribute("form") ElementsForm form, BindingResult errors, @RequestParam int insert) {
		form.inserted(insert);
		return ELEMENTS;
	}

	@PostMapping(path = "/elements", params = "!insert")
	String call(@ModelAttribute(name = PAGE, binding = false) KeyingPage page,
			@ModelAttribute("form") ElementsForm form, BindingResult errors, Actor actor, RedirectAttributes redirect) {
		if (form.isAbout(page, errors)) {
			form.check(page.pointsRules().values(), errors);
		}
		if (Submission.refused(errors, () -> this.calls.call(form.calls(), actor))) {
			form.widened();
			return ELEMENTS;
		}
		Notice.give(redirect, "keying.desk.elements.received");
		return back(page);
	}

	@GetMapping("/deductions")
	String deductions(@ModelAttribute(name = PAGE, binding = false) KeyingPage page, Model model) {
		model.addAttribute("form", DeductionsForm.of(page));
		model.addAttribute("items", items(page));
		return DEDUCTIONS;
	}

	@PostMapping("/deductions")
	String note(@ModelAttribute(name = PAGE, binding = false) KeyingPage page,
			@ModelAttribute("form") DeductionsForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		if (form.isAbout(page, errors)) {
			form.check(errors);
		}
		if (Submission.refused(errors, () -> this.deductions.note(form.note(), actor))) {
			form.widened();
			model.addAttribute("items", items(page));
			return DEDUCTIONS;
		}
		Notice.give(redirect, "keying.desk.deductions.received");
		return back(page);
	}

	private static List<Choice> items(KeyingPage page) {
		return page.pointsRules().deductions().stream().map(DeductionRow::choice).toList();
	}

	private static String back(KeyingPage page) {
		return "redirect:/desk/keying/" + page.segment().id() + page.query();
	}

}
