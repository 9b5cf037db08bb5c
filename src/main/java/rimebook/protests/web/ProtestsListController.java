package rimebook.protests.web;

import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

import rimebook.pages.DeskEntry;
import rimebook.results.SegmentOverview;

/** The segments about which a protest or a correction may be. */
@Controller
class ProtestsListController {

	private final SegmentOverview overview;

	ProtestsListController(SegmentOverview overview) {
		this.overview = overview;
	}

	@GetMapping("/desk/protests")
	String list(Model model) {
		model.addAttribute("lines", this.overview.segments());
		model.addAttribute("list", "protests");
		return "results/list";
	}

	@Bean
	static DeskEntry protestsDeskEntry() {
		return new DeskEntry(610, "/desk/protests", "protests");
	}

}
