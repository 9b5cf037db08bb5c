package rimebook.protests.web;

import java.time.Instant;
import java.util.Arrays;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
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
import rimebook.entries.EntryId;
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Protests of a segment: taken at the desk, decided by the referee. */
@Controller
@RequestMapping("/desk/protests/{segment}")
class ProtestsController {

	private static final String FORM = "protests/file";

	private static final String DECISION = "protests/decision";

	private final ProtestsComposer pages;

	private final Protests protests;

	ProtestsController(ProtestsComposer pages, Protests protests) {
		this.pages = pages;
		this.protests = protests;
	}

	@GetMapping
	String overview(@PathVariable SegmentId segment, HttpServletRequest request, Model model) {
		fill(this.pages.of(segment), request, model);
		return "protests/overview";
	}

	/**
	 * The same for a page that is open; nothing new where it is as it was.
	 * @param seen the print of what the page shows
	 */
	@GetMapping("/live")
	@Nullable String follow(@PathVariable SegmentId segment, @RequestParam(defaultValue = "") String seen,
			HttpServletRequest request, HttpServletResponse response, Model model) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, CacheControl.noStore().getHeaderValue());
		ProtestsPage page = this.pages.of(segment);
		if (page.print().equals(seen)) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		fill(page, request, model);
		return "protests/overview :: overview";
	}

	private static void fill(ProtestsPage page, HttpServletRequest request, Model model) {
		model.addAttribute("page", page);
		model.addAttribute("mayCorrect", RestrictedAct.CORRECT.isOf(request));
		model.addAttribute("mayDecide", RestrictedAct.DECIDE.isOf(request));
	}

	@GetMapping("/new")
	String fileForm(@PathVariable SegmentId segment, @ModelAttribute("form") ProtestForm form, Model model) {
		return filePage(segment, model);
	}

	@PostMapping("/new")
	String file(@PathVariable SegmentId segment, @ModelAttribute("form") ProtestForm form, BindingResult result,
			Model model, RedirectAttributes redirect, Actor actor) {
		if (Submission.refused(result, () -> file(segment, form, redirect, actor))) {
			return filePage(segment, model);
		}
		return "redirect:/desk/protests/" + segment;
	}

	private void file(SegmentId segment, ProtestForm form, RedirectAttributes redirect, Actor actor) {
		Instant handedIn = instant(segment, form);
		Protests.FileProtest filed = new Protests.FileProtest(segment, new ProtestView.Claim(entry(form.getEntry()),
				category(form.getCategory()), form.getText(), form.getPosting()), form.getFiledBy(), handedIn);
		Notice.give(redirect, "protests.file.done." + this.protests.file(filed, actor).state());
	}

	private @Nullable Instant instant(SegmentId segment, ProtestForm form) {
		return (form.getHandedInAt() == null) ? null
				: form.getHandedInAt().atZone(this.pages.of(segment).at().competition().zone()).toInstant();
	}

	private static EntryId entry(String text) {
		return Given.read("entry", text, EntryId::of, Sentence.of("protests.team-missing"));
	}

	private static ProtestView.ProtestCategory category(ProtestView.@Nullable ProtestCategory category) {
		if (category == null) {
			throw new RuleViolationException("field-missing", "category", Sentence.of("protests.category-missing"));
		}
		return category;
	}

	private String filePage(SegmentId segment, Model model) {
		model.addAttribute("page", this.pages.of(segment));
		model.addAttribute("teams", this.pages.teams(segment));
		model.addAttribute("categories", Arrays.asList(ProtestView.ProtestCategory.values()));
		return FORM;
	}

	@GetMapping("/protest/{protest}")
	String decisionForm(@PathVariable SegmentId segment, @PathVariable ProtestView.ProtestId protest,
			@ModelAttribute("form") DecisionForm form, HttpServletRequest request, Model model) {
		form.setVersion(decisionPage(segment, protest, request, model).protest().version());
		return DECISION;
	}

	@PostMapping("/protest/{protest}")
	String decide(@PathVariable SegmentId segment, @PathVariable ProtestView.ProtestId protest,
			@ModelAttribute("form") DecisionForm form, BindingResult result,
			@RequestParam(required = false) @Nullable Boolean upheld, Model model, RedirectAttributes redirect,
			HttpServletRequest request, Actor actor) {
		RestrictedAct.DECIDE.require(request);
		if (upheld == null) {
			result.reject("field-missing", "Say whether the protest is upheld or denied.");
		}
		boolean isUpheld = Boolean.TRUE.equals(upheld);
		if (Submission.refused(result,
				() -> this.protests.decide(protest, form.getVersion(), isUpheld, form.getGrounds(), actor))) {
			decisionPage(segment, protest, request, model);
			return DECISION;
		}
		Notice.give(redirect, isUpheld ? "protests.decision.upheld" : "protests.decision.denied");
		return "redirect:/desk/protests/" + segment;
	}

	/** A second official says whether it was handed in before the time was over. */
	@PostMapping("/protest/{protest}/time")
	String confirm(@PathVariable SegmentId segment, @PathVariable ProtestView.ProtestId protest,
			@ModelAttribute("form") DecisionForm form, BindingResult result,
			@RequestParam(defaultValue = "false") boolean inTime, Model model, RedirectAttributes redirect,
			HttpServletRequest request, Actor actor) {
		if (Submission.refused(result,
				() -> this.protests.confirm(protest, form.getVersion(), inTime, form.getGrounds(), actor))) {
			decisionPage(segment, protest, request, model);
			return DECISION;
		}
		Notice.give(redirect, inTime ? "protests.time.confirmed" : "protests.time.refused");
		return "redirect:/desk/protests/" + segment;
	}

	private ProtestsPage.ProtestLine decisionPage(SegmentId segment, ProtestView.ProtestId id,
			HttpServletRequest request, Model model) {
		ProtestsPage page = this.pages.of(segment);
		ProtestsPage.ProtestLine line = page.protests()
			.stream()
			.filter((each) -> each.protest().id().equals(id))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("protest", id));
		model.addAttribute("page", page);
		model.addAttribute("line", line);
		model.addAttribute("mayDecide", RestrictedAct.DECIDE.isOf(request));
		return line;
	}

}
