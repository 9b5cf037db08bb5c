package rimebook.audit;

import java.io.IOException;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.util.UriComponentsBuilder;

/** Shows the record, newest line first, and whether its chain is whole. */
@Controller
@RequestMapping("/desk/record")
class RecordController {

	private final RecordReading reading;

	private final RecordVerification verification;

	private final RecordNames names;

	private final RecordExport export;

	RecordController(RecordReading reading, RecordVerification verification, RecordNames names, RecordExport export) {
		this.reading = reading;
		this.verification = verification;
		this.names = names;
		this.export = export;
	}

	@GetMapping
	String show(@RequestParam(defaultValue = "") String subject, @RequestParam(defaultValue = "") String text,
			@RequestParam(defaultValue = "1") int page, Model model) {
		RecordReading.Query query = new RecordReading.Query(subject, text, page);
		model.addAttribute("query", query);
		RecordReading.Page record = this.reading.read(query);
		model.addAttribute("record", record);
		model.addAttribute("lines", this.names.of(record.lines()));
		model.addAttribute("subjects", this.reading.subjects());
		model.addAttribute("head", this.verification.head());
		model.addAttribute("zone", this.names.zone());
		model.addAttribute("path", path(query));
		return "audit/record";
	}

	/** The whole record as a file. */
	@GetMapping("/lines.jsonl")
	void export(HttpServletResponse response) throws IOException {
		response.setContentType("application/jsonl");
		response.setHeader(HttpHeaders.CONTENT_DISPOSITION,
				ContentDisposition.attachment().filename("record.jsonl").build().toString());
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		this.export.write(response.getOutputStream());
	}

	@PostMapping("/check")
	String check(RedirectAttributes redirect) {
		RecordFinding finding = this.verification.verify();
		redirect.addFlashAttribute("finding", finding);
		if (finding.isWhole()) {
			redirect.addFlashAttribute("stored", this.verification.compareStored());
		}
		return "redirect:/desk/record";
	}

	private static String path(RecordReading.Query query) {
		return UriComponentsBuilder.fromPath("/desk/record")
			.queryParam("subject", "{subject}")
			.queryParam("text", "{text}")
			.encode()
			.buildAndExpand(query.subject(), query.text())
			.toUriString() + "&";
	}

}
