package rimebook.results.web;

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
import rimebook.accounts.Role;
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

	private static final String VISITOR = "visitor";

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

	@ModelAttribute(VISITOR)
	Visitor visitor(@PathVariable SegmentId segment, Authentication person, Actor actor) {
		return new Visitor(segment, person, actor);
	}

	@GetMapping
	String show(@ModelAttribute(name = VISITOR, binding = false) Visitor visitor, @ModelAttribute("act") ActForm form,
			Model model) {
		form.setVersion(page(visitor, model));
		return PAGE;
	}

	/** The check list, if it is no longer as the page shows it. */
	@GetMapping("/live")
	@Nullable String follow(@ModelAttribute(name = VISITOR, binding = false) Visitor visitor,
			@RequestParam(defaultValue = "") String shown, @RequestParam(defaultValue = "") String seen, Model model,
			HttpServletResponse response) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		if (this.checks.into(visitor.segment(), shown, visitor.person(), model).equals(seen)) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		model.addAttribute("segment", visitor.segment());
		return "results/checks :: checks";
	}

	private int page(Visitor visitor, Model model) {
		SegmentId segment = visitor.segment();
		ResultsPage page = this.pages.of(segment);
		int version = (page.result() != null) ? page.result().version() : 0;
		model.addAttribute("page", page);
		model.addAttribute("fromMemory", this.ruleSets.fromMemory(page.event()));
		model.addAttribute("segment", segment);
		this.checks.into(segment, "", visitor.person(), model);
		whoSigns(segment, visitor.actor(), model);
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
	String post(@ModelAttribute(name = VISITOR, binding = false) Visitor visitor, @ModelAttribute("act") ActForm form,
			BindingResult result, Model model, RedirectAttributes redirect) {
		boolean refused = Submission.refused(result,
				() -> this.publication.post(visitor.segment(), form.getVersion(), visitor.actor()));
		return refused ? again(visitor, model) : done(visitor, "results.desk.posted", redirect);
	}

	/** Asks once, saying what follows, and for the password of the one who signs. */
	@GetMapping("/signature")
	String signature(@ModelAttribute(name = VISITOR, binding = false) Visitor visitor,
			@ModelAttribute("act") ActForm form, Model model) {
		int version = page(visitor, model);
		form.setVersion((form.getVersion() > 0) ? form.getVersion() : version);
		return SIGNATURE;
	}

	@PostMapping("/signature")
	String sign(@ModelAttribute(name = VISITOR, binding = false) Visitor visitor, @ModelAttribute("act") ActForm form,
			BindingResult result, Model model, RedirectAttributes redirect) {
		Signatories.Signatory signatory = form.getSignatory();
		if (signatory == null) {
			result.rejectValue("signatory", "field-missing", "Say whether you sign as referee or as accountant.");
		}
		else if (!visitor.mayActAs(signatory)) {
			throw new AccessDeniedException("Signing as " + signatory + " needs that role.");
		}
		if (Submission.refused(result, () -> sign(visitor, form))) {
			page(visitor, model);
			return SIGNATURE;
		}
		return done(visitor, "results.desk.signed", redirect);
	}

	private void sign(Visitor visitor, ActForm form) {
		this.passwords.require(visitor.person(), form.getPassword(), visitor.actor());
		Signatories.Signatory signatory = form.getSignatory();
		if (signatory != null) {
			this.publication.sign(visitor.segment(), form.getVersion(), signatory, visitor.actor());
		}
	}

	@PostMapping("/reopening")
	String reopen(@ModelAttribute(name = VISITOR, binding = false) Visitor visitor, @ModelAttribute("act") ActForm form,
			BindingResult result, Model model, RedirectAttributes redirect) {
		if (!visitor.mayActAs(Signatories.Signatory.REFEREE)) {
			throw new AccessDeniedException("Only a referee opens a result again.");
		}
		boolean refused = Submission.refused(result,
				() -> this.publication.reopen(visitor.segment(), form.getVersion(), form.getReason(), visitor.actor()));
		return refused ? again(visitor, model) : done(visitor, "results.desk.reopened", redirect);
	}

	private String again(Visitor visitor, Model model) {
		page(visitor, model);
		return PAGE;
	}

	private static String done(Visitor visitor, String words, RedirectAttributes redirect) {
		Notice.give(redirect, words);
		return "redirect:/desk/results/" + visitor.segment();
	}

	/** Who is at the desk, and which segment's result they look at. */
	record Visitor(SegmentId segment, Authentication person, Actor actor) {

		/** Tell whether one of the person's roles is that of who signs there. */
		boolean mayActAs(Signatories.Signatory signatory) {
			String authority = Role.valueOf(signatory.name()).authority();
			return this.person.getAuthorities().stream().anyMatch((held) -> authority.equals(held.getAuthority()));
		}

	}

}
