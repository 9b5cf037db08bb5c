package rimebook.documents.web;

import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

import rimebook.documents.DocumentRef;
import rimebook.documents.Documents;
import rimebook.shared.NotFoundException;

/**
 * Tells whoever holds a sheet whether the data are still those that it was made of. It
 * says nothing of the data but that, so it is open to everybody.
 */
@Controller
class ComparisonController {

	private static final Pattern PRINTED = Pattern.compile("[0-9a-f]{32}");

	private final Documents documents;

	ComparisonController(Documents documents) {
		this.documents = documents;
	}

	@GetMapping("/follow/paper/{kind}/{subject}/{version}/{printed}")
	String compare(@PathVariable String kind, @PathVariable UUID subject, @PathVariable int version,
			@PathVariable String printed, HttpServletResponse response, Model model) {
		DocumentRef ref = DocumentRef.of(kind, subject, version);
		if (ref.kind().isForTheRefereeAlone()) {
			throw NotFoundException.of("document", kind);
		}
		return compare(ref, printed, response, model);
	}

	/** The same for whoever may open the document. */
	@GetMapping("/desk/documents/{kind}/{subject}/{version}/compare/{printed}")
	String compareAtTheDesk(@PathVariable String kind, @PathVariable UUID subject, @PathVariable int version,
			@PathVariable String printed, HttpServletResponse response, Model model) {
		return compare(DocumentRef.of(kind, subject, version), printed, response, model);
	}

	private String compare(DocumentRef ref, String printed, HttpServletResponse response, Model model) {
		if (!PRINTED.matcher(printed).matches()) {
			throw NotFoundException.of("document", printed);
		}
		response.setHeader(HttpHeaders.CACHE_CONTROL, CacheControl.noStore().getHeaderValue());
		model.addAttribute("comparison",
				Comparison.of(ref, printed, this.documents.fingerprint(ref), this.documents.newestVersion(ref)));
		return "documents/comparison";
	}

	/**
	 * What came of it.
	 *
	 * @param printed the first half of the fingerprint on the sheet
	 * @param newest the version that has replaced the sheet's, or the sheet's own
	 */
	record Comparison(DocumentRef ref, String printed, Finding finding, int newest) {

		/** The same in groups, as it stands on the sheet. */
		public String inGroups() {
			return this.printed.replaceAll("(.{8})(?=.)", "$1 ");
		}

		static Comparison of(DocumentRef ref, String printed, Optional<String> kept, int newest) {
			return new Comparison(ref, printed,
					kept.map((fingerprint) -> fingerprint.startsWith(printed) ? same(ref, newest) : Finding.OTHER)
						.orElse(Finding.GONE),
					newest);
		}

		/** A sheet may hang on the wall with a result that was corrected since. */
		private static Finding same(DocumentRef ref, int newest) {
			return (ref.version() > 0 && newest > ref.version()) ? Finding.REPLACED : Finding.SAME;
		}

	}

	/** Whether the data are those of the sheet. */
	enum Finding {

		SAME, REPLACED, OTHER, GONE

	}

}
