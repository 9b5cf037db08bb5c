package rimebook.results.web;

import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

import rimebook.pages.DeskEntry;
import rimebook.results.SegmentOverview;

/** The segments from which the results desk chooses. */
@Controller
class ResultsListController {

	private final SegmentOverview overview;

	ResultsListController(SegmentOverview overview) {
		this.overview = overview;
	}

	@GetMapping("/desk/results")
	String list(Model model) {
		model.addAttribute("lines", this.overview.segments());
		model.addAttribute("list", "results");
		return "results/list";
	}

	@Bean
	static DeskEntry resultsDeskEntry() {
		return new DeskEntry(600, "/desk/results", "results");
	}

}
