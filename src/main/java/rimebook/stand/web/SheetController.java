package rimebook.stand.web;

import java.util.Locale;

import jakarta.servlet.http.HttpServletRequest;
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
import rimebook.live.PageLanguage;
import rimebook.stand.RunningSegments;

/**
 * The announcer's running sheet: whom to announce, how, and what to read aloud. It speaks
 * the language that the announcer chose.
 */
@Controller
class SheetController {

	private final RunningSheet sheet;

	private final RunningSegments segments;

	SheetController(RunningSheet sheet, RunningSegments segments) {
		this.sheet = sheet;
		this.segments = segments;
	}

	@GetMapping("/desk/sheet")
	String choose(Model model) {
		model.addAttribute("days", this.segments.days());
		return "stand/sheets";
	}

	@GetMapping("/desk/sheet/{segment}")
	String show(@PathVariable SegmentId segment, HttpServletRequest request, Model model) {
		this.sheet.into(segment, language(request), model);
		return "stand/sheet";
	}

	/** The part of the sheet that moves, from the same template, if it has moved. */
	@GetMapping("/desk/sheet/{segment}/live")
	@Nullable String follow(@PathVariable SegmentId segment, @RequestParam(defaultValue = "") String seen,
			HttpServletRequest request, Model model, HttpServletResponse response) {
		this.sheet.into(segment, language(request), model);
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		if (seen.equals(model.getAttribute("print"))) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		return "stand/sheet :: running";
	}

	/** English like the rest of the desk, until another one is chosen. */
	private static PageLanguage language(HttpServletRequest request) {
		PageLanguage asked = PageLanguage.of(request);
		return asked.chosen() ? asked : new PageLanguage(Locale.ENGLISH, false);
	}

}
