package rimebook.keying;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rimebook.stand.RunningSegments;

/** The segments from which the keying desk chooses. */
@Controller
class KeyingListController {

	private final RunningSegments segments;

	KeyingListController(RunningSegments segments) {
		this.segments = segments;
	}

	@GetMapping("/desk/keying")
	String choose(Model model) {
		model.addAttribute("days", this.segments.days());
		return "keying/keyings";
	}

}
