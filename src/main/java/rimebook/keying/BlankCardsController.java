package rimebook.keying;

import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.SegmentId;
import rimebook.pages.PdfPage;

/** Blank cards on paper, for the day on which the tablets or the network are gone. */
@Controller
class BlankCardsController {

	private final BlankCardsSource source;

	private final PdfPage pdf;

	BlankCardsController(BlankCardsSource source, PdfPage pdf) {
		this.source = source;
		this.pdf = pdf;
	}

	@GetMapping("/desk/keying/{segment}/blank-cards.pdf")
	ResponseEntity<byte[]> print(@PathVariable SegmentId segment,
			@RequestParam(required = false) @Nullable Integer seat,
			@RequestParam(required = false) @Nullable Integer team, Locale language) {
		BlankCards cards = this.source.of(segment, seat, team);
		byte[] document = this.pdf.of("keying/blank-cards-pdf", language, Map.of("cards", cards));
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.header(HttpHeaders.CONTENT_DISPOSITION, ContentDisposition.inline()
				.filename("blank-cards-" + cards.at().event().slug() + "-" + cards.at().segment().slug() + ".pdf")
				.build()
				.toString())
			.header(HttpHeaders.CACHE_CONTROL, "no-store")
			.body(document);
	}

}
