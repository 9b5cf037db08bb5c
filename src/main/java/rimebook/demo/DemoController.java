package rimebook.demo;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.pages.DeskEntry;
import rimebook.pages.Notice;
import rimebook.rehearsal.SimulatedPanel;

/** Paces the simulated panel. */
@Controller
@Profile("demo")
class DemoController {

	private static final String PAGE = "redirect:/desk/demo";

	private final DemoRunner runner;

	private final SimulatedPanel panel;

	DemoController(DemoRunner runner, SimulatedPanel panel) {
		this.runner = runner;
		this.panel = panel;
	}

	@GetMapping("/desk/demo")
	String show(Model model) {
		model.addAttribute("paused", this.runner.panel().isPaused());
		model.addAttribute("pace", this.runner.panel().pace().toSeconds());
		model.addAttribute("stand", this.panel.look());
		return "demo/pace";
	}

	@PostMapping("/desk/demo/pause")
	String pause(RedirectAttributes redirect) {
		this.runner.panel().pause();
		Notice.give(redirect, "demo.pace.paused");
		return PAGE;
	}

	@PostMapping("/desk/demo/resume")
	String resume(RedirectAttributes redirect) {
		this.runner.panel().resume();
		Notice.give(redirect, "demo.pace.resumed");
		return PAGE;
	}

	@PostMapping("/desk/demo/step")
	String step(RedirectAttributes redirect) {
		this.runner.panel().step();
		Notice.give(redirect, "demo.pace.stepped");
		return PAGE;
	}

	@Bean
	static DeskEntry demoDeskEntry() {
		return new DeskEntry(1000, "/desk/demo", "demo");
	}

}
