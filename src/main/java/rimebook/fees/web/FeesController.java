package rimebook.fees.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.fees.Fees;
import rimebook.fees.Ledger;
import rimebook.pages.Notice;
import rimebook.shared.Actor;

/** How the clubs of a competition stand. */
@Controller
@RequestMapping("/desk/fees")
class FeesController {

	private final Fees fees;

	private final Ledger ledger;

	private final Competitions competitions;

	FeesController(Fees fees, Ledger ledger, Competitions competitions) {
		this.fees = fees;
		this.ledger = ledger;
		this.competitions = competitions;
	}

	@GetMapping
	String overview(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "fees/overview";
	}

	@GetMapping("/{competition}")
	String clubs(@PathVariable CompetitionId competition, Model model) {
		model.addAttribute("fees", this.fees.of(competition));
		return "fees/clubs";
	}

	@PostMapping("/{competition}/settlement")
	String settle(@PathVariable CompetitionId competition, Actor actor, RedirectAttributes redirect) {
		Notice.give(redirect, "fees.settled", String.valueOf(this.ledger.settle(competition, actor)));
		return "redirect:/desk/fees/" + competition;
	}

}
