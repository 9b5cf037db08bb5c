package rimebook.results.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.Authentication;
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

import rimebook.accounts.OwnPassword;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.shared.Actor;

/** The results desk: check, post, sign, open again. */
@Controller
@RequestMapping("/desk/results/{segment}")
class ResultsController {

	private static final String PAGE = "results/desk";

	private static final String SIGNATURE = "results/signature";

	private final ResultsPage.Source pages;

	private final ResultPublication publication;

	private final CheckList checks;

	private final OwnPassword passwords;

	private final RuleSets ruleSets;

	private final Signatories signatories;

	ResultsController(ResultsPage.Source pages, ResultPublication publication, CheckList checks, OwnPassword passwords,
			RuleSets ruleSets, Signatories signatories) {
		this.ruleSets = ruleSets;
		this.signatories = signatories;
		this.passwords = passwords;
		this.pages = pages;
		this.publication = publication;
		this.checks = checks;
	}

	@GetMapping
	String show(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, Authentication person,
			Actor actor, Model model) {
		form.setVersion(page(segment, person, actor, model));
		return PAGE;
	}

	/** The check list, if it is no longer as the page shows it. */
	@GetMapping("/live")
	@Nullable String follow(@PathVariable SegmentId segment, @RequestParam(defaultValue = "0") int version,
			@RequestParam(defaultValue = "") String seen, Authentication person, Model model,
			HttpServletResponse response) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		if (this.checks.into(segment, version, person, model).equals(seen)) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		model.addAttribute("segment", segment);
		return "results/checks :: checks";
	}

	private int page(SegmentId segment, Authentication person, Actor actor, Model model) {
		ResultsPage page = this.pages.of(segment);
		int version = (page.result() != null) ? page.result().version() : 0;
		model.addAttribute("page", page);
		model.addAttribute("fromMemory", this.ruleSets.fromMemory(page.event()));
		model.addAttribute("segment", segment);
		this.checks.into(segment, version, person, model);
		whoSigns(segment, actor, model);
		return version;
	}

	/** Who signs, and whether that is who looks. */
	private void whoSigns(SegmentId segment, Actor actor, Model model) {
		Signatories.SeatedSignatories seated = this.signatories.of(segment);
		model.addAttribute("whoSigns", seated.sentence());
		model.addAttribute("signsAsReferee", seated.maySign(Signatories.Signatory.REFEREE, actor));
		model.addAttribute("signsAsAccountant", seated.maySign(Signatories.Signatory.ACCOUNTANT, actor));
	}

	@PostMapping("/posting")
	String post(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, BindingResult result, Model model,
			RedirectAttributes redirect, Authentication person, Actor actor) {
		return answer(segment,
				Submission.refused(result, () -> this.publication.post(segment, form.getVersion(), actor)),
				"results.desk.posted", model, redirect, person, actor);
	}

	/** Asks once, saying what follows, and for the password of the one who signs. */
	@GetMapping("/signature")
	String signature(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, Authentication person,
			Actor actor, Model model) {
		int version = page(segment, person, actor, model);
		form.setVersion((form.getVersion() > 0) ? form.getVersion() : version);
		return SIGNATURE;
	}

	@PostMapping("/signature")
	String sign(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, BindingResult result, Model model,
			RedirectAttributes redirect, Authentication person, Actor actor, HttpServletRequest request) {
		Signatories.Signatory signatory = form.getSignatory();
		if (signatory == null) {
			result.rejectValue("signatory", "field-missing", "Say whether you sign as referee or as accountant.");
		}
		else if (!request.isUserInRole(signatory.name())) {
			throw new AccessDeniedException("Signing as " + signatory + " needs that role.");
		}
		if (Submission.refused(result, () -> sign(segment, form, person, actor))) {
			page(segment, person, actor, model);
			return SIGNATURE;
		}
		Notice.give(redirect, "results.desk.signed");
		return "redirect:/desk/results/" + segment;
	}

	private void sign(SegmentId segment, ActForm form, Authentication person, Actor actor) {
		this.passwords.require(person, form.getPassword(), actor);
		Signatories.Signatory signatory = form.getSignatory();
		if (signatory != null) {
			this.publication.sign(segment, form.getVersion(), signatory, actor);
		}
	}

	@PostMapping("/reopening")
	String reopen(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, BindingResult result,
			Model model, RedirectAttributes redirect, Authentication person, Actor actor, HttpServletRequest request) {
		if (!request.isUserInRole(Signatories.Signatory.REFEREE.name())) {
			throw new AccessDeniedException("Only a referee opens a result again.");
		}
		return answer(segment,
				Submission.refused(result,
						() -> this.publication.reopen(segment, form.getVersion(), form.getReason(), actor)),
				"results.desk.reopened", model, redirect, person, actor);
	}

	private String answer(SegmentId segment, boolean refused, String done, Model model, RedirectAttributes redirect,
			Authentication person, Actor actor) {
		if (refused) {
			page(segment, person, actor, model);
			return PAGE;
		}
		Notice.give(redirect, done);
		return "redirect:/desk/results/" + segment;
	}

}
