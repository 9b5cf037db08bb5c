package rimebook.fees.web;

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

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.fees.Fees;
import rimebook.fees.Ledger;
import rimebook.fees.LedgerRowView;
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** Takes a booking back that was a slip. */
@Controller
@RequestMapping("/desk/fees/booking/{booking}")
class ReversalController {

	private final Fees fees;

	private final Ledger ledger;

	private final Competitions competitions;

	ReversalController(Fees fees, Ledger ledger, Competitions competitions) {
		this.fees = fees;
		this.ledger = ledger;
		this.competitions = competitions;
	}

	@GetMapping
	String ask(@PathVariable LedgerRowView.Id booking, Model model) {
		model.addAttribute("reversalForm", new ReversalForm(""));
		return page(booking, model);
	}

	@PostMapping
	String reverse(@PathVariable LedgerRowView.Id booking, @ModelAttribute("reversalForm") ReversalForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.ledger.reverse(booking, Given.text(form.why()), actor))) {
			return page(booking, model);
		}
		LedgerRowView row = this.fees.row(booking);
		Notice.give(redirect, "fees.reversal.done");
		return "redirect:/desk/fees/" + row.competition() + "/club/" + row.club();
	}

	private String page(LedgerRowView.Id id, Model model) {
		LedgerRowView row = this.fees.row(id);
		CompetitionView competition = this.competitions.competition(row.competition());
		model.addAttribute("row", row);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("account", this.fees.account(row.competition(), row.club()));
		return "fees/reversal";
	}

	/** Why it is taken back. */
	record ReversalForm(@Nullable String why) {
	}

}
