package rimebook.audit;

import java.util.List;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Shows which published versions are covered by anchors that lie elsewhere, and compares
 * the record with those that somebody brings.
 */
@Controller
@RequestMapping("/desk/record/anchors")
class AnchorController {

	private final RecordReading reading;

	private final RecordNames names;

	private final RecordAnchors anchors;

	private final AnchorSigning signing;

	private final RecordVerification verification;

	AnchorController(RecordReading reading, RecordNames names, RecordAnchors anchors, AnchorSigning signing,
			RecordVerification verification) {
		this.reading = reading;
		this.names = names;
		this.anchors = anchors;
		this.signing = signing;
		this.verification = verification;
	}

	@GetMapping
	String show(@RequestParam(defaultValue = "1") int page, Model model) {
		RecordReading.Query query = new RecordReading.Query(RecordSearch.ofVersions(), page);
		RecordReading.Page record = this.reading.read(query);
		List<RecordAnchors.Kept> kept = this.anchors.kept();
		model.addAttribute("query", query);
		model.addAttribute("record", record);
		model.addAttribute("versions",
				this.names.of(record.lines()).stream().map((read) -> CoveredVersion.of(read, kept)).toList());
		model.addAttribute("kept", kept);
		model.addAttribute("zone", this.names.zone());
		model.addAttribute("head", this.anchors.head().orElse(null));
		model.addAttribute("publicKey", this.signing.publicKey().orElse(null));
		model.addAttribute("fault", this.signing.fault());
		return "audit/anchors";
	}

	/** Compare what somebody brought; nothing of it is kept. */
	@PostMapping
	String compare(@RequestParam(defaultValue = "") String brought, RedirectAttributes redirect) {
		AnchorFile file = AnchorFile.read(brought);
		if (!file.unreadable().isEmpty() || file.anchors().isEmpty()) {
			throw RuleViolationException.ofField("no-anchor", "brought",
					file.unreadable().isEmpty() ? Sentence.of("audit.no-anchor")
							: Sentence.of("audit.no-anchor-in-line", file.unreadable().get(0)));
		}
		redirect.addFlashAttribute("finding", this.verification.compare(file.anchors()));
		return "redirect:/desk/record/anchors";
	}

	/**
	 * A published version and places that were known to hold an anchor which covers it.
	 * An anchor that fits the record no more covers nothing of it.
	 *
	 * @param places a few of them, those with the newest anchors first
	 * @param more how many further ones there are
	 */
	record CoveredVersion(ReadableLine read, List<String> places, int more) {

		private static final int SHOWN = 5;

		/**
		 * Look which places cover it.
		 * @param kept those that hold the newest first
		 */
		static CoveredVersion of(ReadableLine read, List<RecordAnchors.Kept> kept) {
			List<String> places = kept.stream()
				.filter((place) -> place.fits() && place.line() >= read.line().number())
				.map(RecordAnchors.Kept::place)
				.toList();
			int shown = Math.min(SHOWN, places.size());
			return new CoveredVersion(read, places.subList(0, shown), places.size() - shown);
		}

	}

}
