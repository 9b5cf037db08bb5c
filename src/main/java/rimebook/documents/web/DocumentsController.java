package rimebook.documents.web;

import java.util.List;
import java.util.Locale;
import java.util.UUID;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.documents.DocumentRef;
import rimebook.documents.Documents;
import rimebook.documents.PaperBundles;
import rimebook.pages.DeskEntry;

/** What can be printed of a competition, and each of it as a document. */
@Controller
@RequestMapping("/desk/documents")
class DocumentsController {

	private final Documents documents;

	private final PaperBundles bundles;

	private final Competitions competitions;

	DocumentsController(Documents documents, PaperBundles bundles, Competitions competitions) {
		this.documents = documents;
		this.bundles = bundles;
		this.competitions = competitions;
	}

	@GetMapping
	String competitions(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "documents/competitions";
	}

	@GetMapping("/{competition}")
	String list(@PathVariable("competition") CompetitionId id, @RequestParam(defaultValue = "") String paper,
			@RequestParam(defaultValue = "") String language, Model model) {
		model.addAttribute("bundle", this.bundles.newest(id).orElse(null));
		fill(id, PaperChoice.of(paper, language), offered(id), model);
		return "documents/list";
	}

	/**
	 * What can be printed now, for a page that is open; nothing new where that is as it
	 * was.
	 * @param seen what the page shows
	 */
	@GetMapping("/{competition}/live")
	@Nullable String live(@PathVariable("competition") CompetitionId id, @RequestParam(defaultValue = "") String paper,
			@RequestParam(defaultValue = "") String language, @RequestParam(defaultValue = "") String seen,
			HttpServletResponse response, Model model) {
		List<OfferedEvent> offered = offered(id);
		if (OfferedEvent.print(offered).equals(seen)) {
			response.setStatus(HttpStatus.NO_CONTENT.value());
			return null;
		}
		fill(id, PaperChoice.of(paper, language), offered, model);
		return "documents/list :: offered";
	}

	private List<OfferedEvent> offered(CompetitionId id) {
		return this.competitions.events(id)
			.stream()
			.map((event) -> OfferedEvent.of(event, this.documents.offered(event)))
			.toList();
	}

	private void fill(CompetitionId id, PaperChoice choice, List<OfferedEvent> offered, Model model) {
		model.addAttribute("competition", this.competitions.competition(id));
		model.addAttribute("choice", choice);
		model.addAttribute("events", offered);
		model.addAttribute("print", OfferedEvent.print(offered));
	}

	@GetMapping("/{kind}/{subject}/{version}/sheet.pdf")
	ResponseEntity<byte[]> print(@PathVariable String kind, @PathVariable UUID subject, @PathVariable int version,
			@RequestParam(defaultValue = "") String paper, @RequestParam(defaultValue = "") String language) {
		PaperChoice choice = PaperChoice.of(paper, language);
		return file(this.documents.print(DocumentRef.of(kind, subject, version), choice.paper(), choice.locale()));
	}

	@GetMapping("/event/{event}/all.pdf")
	ResponseEntity<byte[]> printAll(@PathVariable("event") EventId id, @RequestParam(defaultValue = "") String paper,
			@RequestParam(defaultValue = "") String language) {
		PaperChoice choice = PaperChoice.of(paper, language);
		return file(this.documents.printAll(this.competitions.event(id), choice.paper(), choice.locale()));
	}

	private static ResponseEntity<byte[]> file(Documents.Printed printed) {
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.inline().filename(printed.name()).build().toString())
			.body(printed.bytes());
	}

	@Bean
	static DeskEntry documentsDeskEntry() {
		return new DeskEntry(750, "/desk/documents", "documents");
	}

}
