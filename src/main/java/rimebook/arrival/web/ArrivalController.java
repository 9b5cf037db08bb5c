package rimebook.arrival.web;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.arrival.Arrivals;
import rimebook.arrival.CheckIn;
import rimebook.arrival.LineupView;
import rimebook.arrival.Lineups;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.pages.Notice;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.shared.Actor;

/** The tablet at the door: a team is found by three letters, its people are ticked. */
@Controller
@RequestMapping("/desk/arrival")
class ArrivalController {

	private static final int FEWEST_LETTERS = 3;

	private final Arrivals arrivals;

	private final Rosters rosters;

	private final Lineups lineups;

	private final Competitions competitions;

	ArrivalController(Arrivals arrivals, Rosters rosters, Lineups lineups, Competitions competitions) {
		this.lineups = lineups;
		this.arrivals = arrivals;
		this.rosters = rosters;
		this.competitions = competitions;
	}

	@GetMapping
	String overview(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "arrival/overview";
	}

	@GetMapping("/{competition}")
	String teams(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "") String q, Model model) {
		find(competition, q, model);
		return "arrival/teams";
	}

	/** The list alone, while somebody types. */
	@GetMapping("/{competition}/found")
	String found(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "") String q, Model model) {
		find(competition, q, model);
		return "arrival/teams :: found";
	}

	@GetMapping("/entry/{entry}")
	String team(@PathVariable EntryId entry, Model model) {
		into(entry, model);
		return "arrival/team";
	}

	/**
	 * The page's part that another tablet may have changed.
	 * @param seen what the page shows
	 */
	@GetMapping("/entry/{entry}/live")
	@Nullable String live(@PathVariable EntryId entry, @RequestParam(defaultValue = "") String seen, Model model,
			HttpServletResponse response) {
		into(entry, model);
		if (seen.equals(model.getAttribute("print"))) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		return "arrival/team :: live";
	}

	@PostMapping("/place/{place}")
	String note(@PathVariable RosterView.PlaceId place, @RequestParam boolean here, Actor actor) {
		this.arrivals.note(place, here, actor);
		return "redirect:/desk/arrival/entry/" + this.rosters.entryOf(place) + "#people";
	}

	@PostMapping("/entry/{entry}/all")
	String all(@PathVariable EntryId entry, Actor actor, RedirectAttributes redirect) {
		this.arrivals.noteAll(entry, actor);
		Notice.give(redirect, "arrival.all-noted");
		return "redirect:/desk/arrival/entry/" + entry;
	}

	private void find(CompetitionId id, String letters, Model model) {
		List<CheckIn> all = this.arrivals.of(id);
		boolean searched = letters.strip().length() >= FEWEST_LETTERS;
		model.addAttribute("competition", this.competitions.competition(id));
		model.addAttribute("letters", letters);
		model.addAttribute("searched", searched);
		model.addAttribute("all", all.size());
		model.addAttribute("left", all.stream().filter((team) -> !team.isDone()).count());
		model.addAttribute("teams",
				searched ? all.stream().filter((team) -> FoundTeam.is(team, letters)).toList() : all);
	}

	private void into(EntryId entry, Model model) {
		CheckIn team = this.arrivals.of(entry);
		CompetitionView competition = this.competitions.competition(team.event().competition());
		model.addAttribute("team", team);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		List<LineupView> lineups = this.lineups.of(entry);
		model.addAttribute("lineups", lineups);
		model.addAttribute("segments",
				team.event().segments().stream().collect(Collectors.toMap(SegmentView::id, Function.identity())));
		model.addAttribute("print", print(team) + lineups.stream().mapToInt(LineupView::number).sum());
	}

	/** What is shown, in short: who is here, and what is missing. */
	private static String print(CheckIn team) {
		return team.people()
			.stream()
			.map((person) -> person.place().number() + person.place().role().name().substring(0, 1)
					+ (person.isHere() ? "1" : "0"))
			.collect(Collectors.joining(".")) + "-" + team.withoutMusic().size() + team.withoutPlan().size()
				+ team.otherwise().hashCode() + team.emergency() + team.entry().version();
	}

}
