package rimebook.technical;

import java.util.Map;
import java.util.Set;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.SegmentId;
import rimebook.stand.RunningSegments;

/** The technical desk: choose a segment, look at it, follow it, read the list back. */
@Controller
class TechnicalController {

	private final TechnicalComposer pages;

	private final RunningSegments segments;

	TechnicalController(TechnicalComposer pages, RunningSegments segments) {
		this.pages = pages;
		this.segments = segments;
	}

	@GetMapping("/desk/technical")
	String choose(Model model) {
		model.addAttribute("days", this.segments.daysByPoints());
		return "technical/technicals";
	}

	@GetMapping("/desk/technical/{segment}")
	String show(@PathVariable SegmentId segment, Model model) {
		this.pages.into(segment, model);
		return "technical/technical";
	}

	/** The parts that changed since the page was shown. */
	@GetMapping("/desk/technical/{segment}/live")
	@Nullable String follow(@PathVariable SegmentId segment, @RequestParam Map<String, String> seen, Model model,
			HttpServletResponse response) {
		DeskParts parts = this.pages.parts(segment);
		Set<String> changed = parts.changed(seen);
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		if (changed.isEmpty()) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		parts.into(model);
		model.addAttribute("changed", changed);
		return "technical/live";
	}

	/** The whole list in large letters, for reading aloud. */
	@GetMapping("/desk/technical/{segment}/read-back")
	String readBack(@PathVariable SegmentId segment, Model model) {
		this.pages.into(segment, model);
		return "technical/read-back";
	}

	/** The part of the reading that moves, from the same template, if it has moved. */
	@GetMapping("/desk/technical/{segment}/read-back/live")
	@Nullable String followReading(@PathVariable SegmentId segment, @RequestParam Map<String, String> seen, Model model,
			HttpServletResponse response) {
		DeskParts parts = this.pages.parts(segment);
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		Set<String> changed = parts.changed(seen);
		changed.remove("plan");
		if (changed.isEmpty()) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		this.pages.into(segment, model);
		return "technical/read-back :: reading";
	}

}
