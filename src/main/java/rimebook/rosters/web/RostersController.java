package rimebook.rosters.web;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.EntryId;
import rimebook.rosters.Namesakes;
import rimebook.rosters.RosterCheck;
import rimebook.rosters.TeamCheck;

/** What is missing of the teams of a competition, from whom and until when. */
@Controller
@RequestMapping("/desk/rosters")
class RostersController {

	private final Competitions competitions;

	private final RosterCheck check;

	private final Namesakes namesakes;

	RostersController(Competitions competitions, RosterCheck check, Namesakes namesakes) {
		this.competitions = competitions;
		this.check = check;
		this.namesakes = namesakes;
	}

	@GetMapping
	String overview(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "rosters/overview";
	}

	@GetMapping("/{competition}")
	String missing(@PathVariable("competition") CompetitionId id, Model model) {
		CompetitionView competition = this.competitions.competition(id);
		List<TeamCheck> checks = this.check.of(id);
		Map<EntryId, List<Namesakes.Pair>> twice = this.namesakes.of(checks.stream().map(TeamCheck::roster).toList());
		List<TeamRow> teams = checks.stream()
			.sorted(Comparator.comparing((TeamCheck team) -> team.missing().isEmpty()))
			.map((team) -> TeamRow.of(team, competition, twice.getOrDefault(team.entry().id(), List.of()).size()))
			.toList();
		model.addAttribute("competition", competition);
		model.addAttribute("events", this.competitions.events(id));
		model.addAttribute("teams", teams);
		model.addAttribute("waiting", teams.stream().filter((team) -> !team.missing().isEmpty()).count());
		return "rosters/missing";
	}

}
