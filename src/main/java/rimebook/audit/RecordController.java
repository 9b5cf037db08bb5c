package rimebook.audit;

import java.io.IOException;
import java.util.List;

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
	String show(SearchForm search, @RequestParam(defaultValue = "1") int page, Model model) {
		RecordReading.Query query = new RecordReading.Query(search.in(this.names.zone()), page);
		RecordReading.Page record = this.reading.read(query);
		List<ReadableLine> lines = this.names.of(record.lines());
		model.addAttribute("search", search);
		model.addAttribute("query", query);
		model.addAttribute("record", record);
		model.addAttribute("lines", lines);
		model.addAttribute("subjects", this.reading.subjects());
		model.addAttribute("head", this.verification.head());
		model.addAttribute("zone", this.names.zone());
		model.addAttribute("typed", search.query());
		return "audit/record";
	}

	/** The whole record, or what fits, as a file with which the chain can be followed. */
	@GetMapping("/lines.jsonl")
	void json(SearchForm search, HttpServletResponse response) throws IOException {
		RecordSearch wanted = search.in(this.names.zone());
		begin(response, "application/jsonl", wanted.isForAll() ? "record.jsonl" : "record-found.jsonl");
		this.export.writeJson(wanted, response.getOutputStream());
	}

	/** The same for a spreadsheet. */
	@GetMapping("/lines.csv")
	void csv(SearchForm search, HttpServletResponse response) throws IOException {
		RecordSearch wanted = search.in(this.names.zone());
		begin(response, "text/csv;charset=UTF-8", wanted.isForAll() ? "record.csv" : "record-found.csv");
		this.export.writeCsv(wanted, response.getOutputStream());
	}

	private static void begin(HttpServletResponse response, String type, String name) {
		response.setContentType(type);
		response.setHeader(HttpHeaders.CONTENT_DISPOSITION,
				ContentDisposition.attachment().filename(name).build().toString());
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
	}

	@PostMapping("/check")
	String check(RedirectAttributes redirect) {
		RecordFinding finding = this.verification.verify();
		redirect.addFlashAttribute("finding", finding);
		if (finding.isWhole()) {
			redirect.addFlashAttribute("stored", this.verification.compareStored());
			redirect.addFlashAttribute("clock", this.verification.lookAtTheClock());
		}
		return "redirect:/desk/record";
	}

}
