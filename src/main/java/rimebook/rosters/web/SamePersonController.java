package rimebook.rosters.web;

import java.time.ZoneOffset;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.Namesakes;
import rimebook.rosters.SamePerson;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Somebody who was written down twice, and the way back. */
@Controller
@RequestMapping("/desk/rosters/skater/{skater}")
class SamePersonController {

	private final SamePerson same;

	private final Namesakes namesakes;

	private final Skaters skaters;

	private final RosterPages pages;

	SamePersonController(SamePerson same, Namesakes namesakes, Skaters skaters, RosterPages pages) {
		this.same = same;
		this.namesakes = namesakes;
		this.skaters = skaters;
		this.pages = pages;
	}

	@GetMapping("/same")
	String ask(@PathVariable SkaterView.Id skater, Model model) {
		model.addAttribute("sameForm", new SameForm("", "", this.skaters.skater(skater).version()));
		return page(skater, model);
	}

	@PostMapping("/same")
	String merge(@PathVariable SkaterView.Id skater, @ModelAttribute("sameForm") SameForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.same.merge(form.order(skater), actor))) {
			return page(skater, model);
		}
		Notice.give(redirect, "rosters.same.merged");
		return "redirect:/desk/rosters/skater/" + form.otherId();
	}

	/** They are two people, and nobody is asked again. */
	@PostMapping("/apart")
	String keepApart(@PathVariable SkaterView.Id skater, @ModelAttribute("sameForm") SameForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.namesakes.keepApart(form.order(skater), actor))) {
			return page(skater, model);
		}
		Notice.give(redirect, "rosters.same.apart-kept");
		return "redirect:/desk/rosters/skater/" + skater + "/same";
	}

	/** That they are two is taken back. */
	@PostMapping("/apart/{apart}/taking-back")
	String askAgain(@PathVariable SkaterView.Id skater, @PathVariable UUID apart,
			@ModelAttribute("againForm") WaiverController.BackForm form, BindingResult result, Actor actor, Model model,
			RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.namesakes.askAgain(skater, apart, form.reason(), actor))) {
			model.addAttribute("refusedApart", apart);
			return page(skater, model);
		}
		Notice.give(redirect, "rosters.same.asked-again");
		return "redirect:/desk/rosters/skater/" + skater + "/same";
	}

	@PostMapping("/separation")
	String separate(@PathVariable SkaterView.Id skater, @ModelAttribute("backForm") WaiverController.BackForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.same.separate(skater, form.seen(), form.reason(), actor))) {
			return page(skater, model);
		}
		Notice.give(redirect, "rosters.same.separated");
		return "redirect:/desk/rosters/skater/" + skater;
	}

	/** Who turned out to be somebody else has the way back in place of the choice. */
	private String page(SkaterView.Id id, Model model) {
		SkaterView skater = this.skaters.skater(id);
		SkaterView.Id other = skater.mergedInto();
		model.addAttribute("skater", skater);
		model.addAttribute("other", (other != null) ? this.skaters.skater(other) : null);
		model.addAttribute("candidates", skater.isThere() ? this.same.candidates(id) : null);
		model.addAttribute("apart", this.namesakes.of(id));
		// A person is of no competition, whose clock would count.
		model.addAttribute("zone", ZoneOffset.UTC);
		model.addAttribute("clubNames", this.pages.clubNames());
		if (!model.containsAttribute("sameForm")) {
			model.addAttribute("sameForm", new SameForm("", "", skater.version()));
		}
		if (!model.containsAttribute("againForm")) {
			model.addAttribute("againForm", new WaiverController.BackForm("", null));
		}
		if (!model.containsAttribute("backForm")) {
			model.addAttribute("backForm", new WaiverController.BackForm("", skater.version()));
		}
		return "rosters/same";
	}

	/**
	 * Who somebody is, as chosen.
	 *
	 * @param other who stays: the identity and the version with a blank between them
	 */
	record SameForm(@Nullable String other, @Nullable String reason, @Nullable Integer version) {

		SamePerson.Merge order(SkaterView.Id one) {
			return new SamePerson.Merge(one, (this.version != null) ? this.version : 0, otherId(),
					Integer.parseInt(words()[1]), (this.reason != null) ? this.reason : "");
		}

		SkaterView.Id otherId() {
			return new SkaterView.Id(UUID.fromString(words()[0]));
		}

		private String[] words() {
			String chosen = (this.other != null) ? this.other : "";
			if (!chosen.matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12} \\d{1,9}")) {
				throw RuleViolationException.ofField("field-missing", "other", Sentence.of("shared.field.missing"));
			}
			return chosen.split(" ");
		}

	}

}
