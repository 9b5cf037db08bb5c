package rimebook.commentary.web;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

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

import rimebook.accounts.CommentaryLinks;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.pages.HouseAddress;
import rimebook.pages.HouseAddresses;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** The links of a competition's commentators: issued, printed, made anew, shut. */
@Controller
@RequestMapping("/desk/commentary")
class CommentaryLinksController {

	private final CommentaryLinks links;

	private final Competitions competitions;

	private final HouseAddresses addresses;

	CommentaryLinksController(CommentaryLinks links, Competitions competitions, HouseAddresses addresses) {
		this.links = links;
		this.competitions = competitions;
		this.addresses = addresses;
	}

	@GetMapping
	String choose(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "commentary/competitions";
	}

	@GetMapping("/{competition}")
	String show(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "") String address, Model model) {
		model.addAttribute("linkForm", new LinkForm("", false));
		return page(competition, address, model);
	}

	@PostMapping("/{competition}")
	String issue(@PathVariable CompetitionId competition, @ModelAttribute("linkForm") LinkForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors,
				() -> this.links.issue(form.order(competition.value(), end(competition)), actor))) {
			return page(competition, "", model);
		}
		Notice.give(redirect, "commentary.links.issued");
		return to(competition);
	}

	@PostMapping("/{competition}/{link}/renewal")
	String renew(@PathVariable CompetitionId competition, @PathVariable UUID link, Actor actor,
			RedirectAttributes redirect) {
		this.links.renew(competition.value(), link, end(competition), actor);
		Notice.give(redirect, "commentary.links.renewed");
		return to(competition);
	}

	@PostMapping("/{competition}/{link}/revocation")
	String revoke(@PathVariable CompetitionId competition, @PathVariable UUID link, Actor actor,
			RedirectAttributes redirect) {
		this.links.revoke(competition.value(), link, actor);
		Notice.give(redirect, "commentary.links.revoked");
		return to(competition);
	}

	private static String to(CompetitionId competition) {
		return "redirect:/desk/commentary/" + competition;
	}

	/** A link is good until the day after the last one is over, where the rink is. */
	private Instant end(CompetitionId id) {
		CompetitionView competition = this.competitions.competition(id);
		Instant end = competition.facts().lastDay().plusDays(2).atStartOfDay(competition.zone()).toInstant();
		if (!this.links.isToCome(end)) {
			throw new RuleViolationException("competition-over", Sentence.of("accounts.competition-over"));
		}
		return end;
	}

	private String page(CompetitionId id, String address, Model model) {
		CompetitionView competition = this.competitions.competition(id);
		HouseAddress house = this.addresses.chosen(address);
		List<LinkRow> rows = this.links.of(id.value()).stream().map((link) -> LinkRow.of(link, house)).toList();
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("links", rows);
		model.addAttribute("shown", rows.stream().filter((row) -> row.address() != null).toList());
		model.addAttribute("house", house);
		model.addAttribute("addresses", this.addresses.choices());
		return "commentary/links";
	}

}
