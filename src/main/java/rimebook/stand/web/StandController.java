package rimebook.stand.web;

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
import rimebook.performances.PerformanceId;
import rimebook.stand.RunningSegments;

/** The referee's stand: choose a segment, look at it, follow it. */
@Controller
class StandController {

	/** The page's own clock is set by it, so that every page shows the same time. */
	private static final String RINK_TIME = "Rink-Time";

	private final StandPage page;

	private final RunningSegments segments;

	StandController(StandPage page, RunningSegments segments) {
		this.page = page;
		this.segments = segments;
	}

	@GetMapping("/desk/stand")
	String choose(Model model) {
		model.addAttribute("days", this.segments.days());
		return "stand/stands";
	}

	@GetMapping("/desk/stand/{segment}")
	String show(@PathVariable SegmentId segment, @RequestParam(required = false) @Nullable PerformanceId end,
			@RequestParam(defaultValue = "") String open, Model model) {
		model.addAttribute("open", open);
		return this.page.show(segment, end, model);
	}

	/**
	 * The parts that changed since the page was shown. When another team is on the ice,
	 * or comes next, the page is opened anew, since its forms are about the one before.
	 */
	@GetMapping("/desk/stand/{segment}/live")
	@Nullable String follow(@PathVariable SegmentId segment, @RequestParam(defaultValue = "") String onIce,
			@RequestParam Map<String, String> seen, Model model, HttpServletResponse response) {
		StandParts parts = this.page.parts(segment);
		Set<String> changed = parts.changed(seen);
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader(RINK_TIME, String.valueOf(this.page.now().toEpochMilli()));
		if (!StandPage.onIce(parts.ice().decision()).equals(onIce)) {
			response.setHeader("HX-Redirect", "/desk/stand/" + segment);
			changed = Set.of();
		}
		if (changed.isEmpty()) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		parts.into(model);
		model.addAttribute("serverNow", this.page.now());
		model.addAttribute("changed", changed);
		model.addAttribute("segment", segment);
		model.addAttribute("path", "/desk/stand/" + segment);
		return "stand/live";
	}

}
