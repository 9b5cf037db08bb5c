package rimebook.managers.web;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.accounts.TeamLinks;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.EntryId;
import rimebook.managers.TeamsLinks;
import rimebook.pages.HouseAddress;
import rimebook.pages.HouseAddresses;
import rimebook.pages.Notice;
import rimebook.pages.QrCode;
import rimebook.shared.Actor;

/** The links of teams' managers: given, printed, made anew, shut. */
@Controller
@RequestMapping("/desk/managers")
class TeamLinksController {

	private final TeamsLinks links;

	private final Competitions competitions;

	private final HouseAddresses addresses;

	TeamLinksController(TeamsLinks links, Competitions competitions, HouseAddresses addresses) {
		this.links = links;
		this.competitions = competitions;
		this.addresses = addresses;
	}

	@GetMapping
	String choose(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "managers/competitions";
	}

	@GetMapping("/{competition}")
	String show(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "") String address, Model model) {
		CompetitionView view = this.competitions.competition(competition);
		HouseAddress house = this.addresses.chosen(address);
		List<LinkRow> rows = this.links.of(competition).stream().map((row) -> LinkRow.of(row, house)).toList();
		model.addAttribute("competition", view);
		model.addAttribute("zone", view.zone());
		model.addAttribute("rows", rows);
		model.addAttribute("without", rows.stream().filter((row) -> row.row().isWithout()).count());
		model.addAttribute("shown", rows.stream().filter((row) -> row.address() != null).toList());
		model.addAttribute("house", house);
		model.addAttribute("addresses", this.addresses.choices());
		return "managers/links";
	}

	/** A link for every team that has none. */
	@PostMapping("/{competition}")
	String giveRest(@PathVariable CompetitionId competition, Actor actor, RedirectAttributes redirect) {
		Notice.give(redirect, "managers.links.given-rest", Integer.toString(this.links.giveRest(competition, actor)));
		return to(competition);
	}

	@PostMapping("/{competition}/{entry}")
	String give(@PathVariable CompetitionId competition, @PathVariable EntryId entry, Actor actor,
			RedirectAttributes redirect) {
		this.links.give(competition, entry, actor);
		Notice.give(redirect, "managers.links.given");
		return to(competition);
	}

	@PostMapping("/{competition}/{entry}/revocation")
	String shut(@PathVariable CompetitionId competition, @PathVariable EntryId entry, Actor actor,
			RedirectAttributes redirect) {
		this.links.shut(competition, entry, actor);
		Notice.give(redirect, "managers.links.shut");
		return to(competition);
	}

	private static String to(CompetitionId competition) {
		return "redirect:/desk/managers/" + competition;
	}

	/**
	 * A team with its link.
	 *
	 * @param address the whole link, {@code null} where it is shown no longer
	 * @param drawing the same to scan
	 */
	record LinkRow(TeamsLinks.TeamRow row, @Nullable String address, @Nullable QrCode drawing) {

		static LinkRow of(TeamsLinks.TeamRow row, HouseAddress house) {
			TeamLinks.LinkView link = row.link();
			boolean shown = row.isGood() && link != null && link.state().token() != null;
			String address = shown ? house.manager(Objects.requireNonNull(Objects.requireNonNull(link).state().token()))
					: null;
			return new LinkRow(row, address, (address != null) ? QrCode.of(address) : null);
		}

		/** Tell whether it opens the page. */
		public boolean isGood() {
			return this.row.isGood();
		}

		/** The last part of the keys {@code web.links.state.…}. */
		public String state() {
			TeamLinks.LinkView link = this.row.link();
			return (link != null) ? link.state().standing().name().toLowerCase(Locale.ROOT) : "none";
		}

	}

}
