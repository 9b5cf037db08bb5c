package rimebook.rehearsal;

import java.time.Duration;

import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.pages.DeskEntry;
import rimebook.pages.Notice;

/** Leads the simulated panel, within the rehearsal. */
@Controller
@Profile(RehearsalMark.PROFILE)
@ConditionalOnProperty(HereConfiguration.ARCHIVE)
@RequestMapping(RehearsalController.PAGE)
class HereController {

	private static final String REDIRECT = "redirect:" + RehearsalController.PAGE;

	private static final int SLOWEST = 600;

	private final PanelRunner runner;

	private final SimulatedPanel panel;

	HereController(PanelRunner runner, SimulatedPanel panel) {
		this.runner = runner;
		this.panel = panel;
	}

	@GetMapping
	String show(Model model) {
		model.addAttribute("mode", this.runner.mode());
		model.addAttribute("modes", PanelRunner.Mode.values());
		model.addAttribute("pace", this.runner.pace().toSeconds());
		model.addAttribute("stand", this.panel.look());
		return "rehearsal/here";
	}

	/** A pace outside of what makes sense is the nearest that does. */
	@PostMapping
	String lead(@RequestParam PanelRunner.Mode mode, @RequestParam(defaultValue = "20") int pace,
			RedirectAttributes redirect) {
		this.runner.pace(Duration.ofSeconds(Math.max(0, Math.min(SLOWEST, pace))));
		this.runner.become(mode);
		Notice.give(redirect, "rehearsal.here.led." + mode);
		return REDIRECT;
	}

	@PostMapping("/step")
	String step(RedirectAttributes redirect) {
		this.runner.step();
		Notice.give(redirect, "rehearsal.here.stepped");
		return REDIRECT;
	}

	@Bean
	static DeskEntry rehearsalDeskEntry() {
		return new DeskEntry(0, RehearsalController.PAGE, "rehearsal");
	}

}
