package rimebook.rehearsal;

import java.time.ZoneId;
import java.util.List;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Profile;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.pages.DeskEntry;
import rimebook.pages.HouseAddresses;
import rimebook.pages.Notice;
import rimebook.pages.QrCode;
import rimebook.pages.RinkClock;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Begins and ends rehearsals, at the real service. */
@Controller
@Profile("!" + RehearsalMark.PROFILE)
@RequestMapping(RehearsalController.PAGE)
class RehearsalController {

	static final String PAGE = "/desk/rehearsal";

	private static final String REDIRECT = "redirect:" + PAGE;

	private final Rehearsals rehearsals;

	private final Readiness readiness;

	private final Competitions competitions;

	private final HouseAddresses addresses;

	RehearsalController(Rehearsals rehearsals, Readiness readiness, Competitions competitions,
			HouseAddresses addresses) {
		this.rehearsals = rehearsals;
		this.readiness = readiness;
		this.competitions = competitions;
		this.addresses = addresses;
	}

	@GetMapping
	String show(Actor actor, Model model) {
		Rehearsal current = this.rehearsals.current();
		fill(current, actor, model);
		if (current == null || current.isOver()) {
			List<Readiness.Competition> all = this.readiness.all();
			model.addAttribute("choices", all);
			model.addAttribute("possible", all.stream().anyMatch(Readiness.Competition::isPossible));
			model.addAttribute("open", this.readiness.isRealSegmentOpen());
			model.addAttribute("free", FreeMemory.megabytes());
			model.addAttribute("needed", this.rehearsals.settings().needed());
			model.addAttribute("lacks", this.rehearsals.lacksMemory());
		}
		return "rehearsal/begin";
	}

	/**
	 * How far it is, for a page that is open; nothing new where it is as it was.
	 * @param seen what the page shows
	 */
	@GetMapping("/live")
	@Nullable String state(@RequestParam(defaultValue = "") String seen, Actor actor, Model model, HttpServletResponse response) {
		Rehearsal current = this.rehearsals.current();
		if (current != null && current.print().equals(seen)) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		fill(current, actor, model);
		return "rehearsal/begin :: state";
	}

	private void fill(@Nullable Rehearsal current, Actor actor, Model model) {
		model.addAttribute("rehearsal", current);
		if (current != null) {
			String address = this.addresses.beside(current.port()).base();
			model.addAttribute("address", address);
			model.addAttribute("drawing", QrCode.of(address + "/judge"));
			model.addAttribute("password", current.passwordFor(actor));
			model.addAttribute("begunAt", new RinkClock(zone(current)).time(current.begun().at()));
		}
	}

	private ZoneId zone(Rehearsal current) {
		return this.competitions.competition(current.competition()).zone();
	}

	@PostMapping
	String begin(@RequestParam CompetitionId competition, @RequestParam(defaultValue = "false") boolean anyway,
			Actor actor, RedirectAttributes redirect) {
		CompetitionView chosen = this.competitions.competition(competition);
		try {
			require(chosen, anyway);
			this.rehearsals.begin(chosen, actor);
		}
		catch (RimebookException ex) {
			redirect.addFlashAttribute("refusal", ex.sentence());
		}
		return REDIRECT;
	}

	private void require(CompetitionView chosen, boolean anyway) {
		if (!this.readiness.of(chosen).isPossible()) {
			throw new RuleViolationException("rehearsal-nothing", Sentence.of("rehearsal.nothing", chosen.name()));
		}
		if (!anyway && this.readiness.isRealSegmentOpen()) {
			throw new RuleViolationException("rehearsal-real-open", Sentence.of("rehearsal.real-open"));
		}
	}

	@PostMapping("/end")
	String end(Actor actor, RedirectAttributes redirect) {
		this.rehearsals.end(actor);
		Notice.give(redirect, "rehearsal.begin.ending");
		return REDIRECT;
	}

	@Bean
	static DeskEntry rehearsalDeskEntry() {
		return new DeskEntry(780, PAGE, "rehearsal");
	}

}
