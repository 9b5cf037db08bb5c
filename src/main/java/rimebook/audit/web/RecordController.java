package rimebook.audit.web;

import java.time.ZoneId;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.util.UriComponentsBuilder;

import rimebook.audit.RecordQuery;
import rimebook.audit.RecordReading;
import rimebook.audit.RecordVerification;

/** Shows the record, newest line first, and whether its chain is whole. */
@Controller
@RequestMapping("/desk/record")
class RecordController {

	private final RecordReading reading;

	private final RecordVerification verification;

	private final ZoneId zone;

	RecordController(RecordReading reading, RecordVerification verification, @Value("${rimebook.zone:}") String zone) {
		this.reading = reading;
		this.verification = verification;
		this.zone = zone.isBlank() ? ZoneId.systemDefault() : ZoneId.of(zone);
	}

	@GetMapping
	String show(@RequestParam(defaultValue = "") String subject, @RequestParam(defaultValue = "") String text,
			@RequestParam(defaultValue = "1") int page, Model model) {
		RecordQuery query = new RecordQuery(subject, text, page);
		model.addAttribute("query", query);
		model.addAttribute("record", this.reading.read(query));
		model.addAttribute("subjects", this.reading.subjects());
		model.addAttribute("head", this.verification.head());
		model.addAttribute("zone", this.zone);
		model.addAttribute("path", path(query));
		return "audit/record";
	}

	@PostMapping("/check")
	String check(RedirectAttributes redirect) {
		redirect.addFlashAttribute("finding", this.verification.verify());
		return "redirect:/desk/record";
	}

	private static String path(RecordQuery query) {
		return UriComponentsBuilder.fromPath("/desk/record")
			.queryParam("subject", "{subject}")
			.queryParam("text", "{text}")
			.encode()
			.buildAndExpand(query.subject(), query.text())
			.toUriString() + "&";
	}

}
