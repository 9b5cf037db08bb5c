package rimebook.pages;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.regex.Matcher;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.springframework.web.util.HtmlUtils;

/** What a document says about itself, in each of the two places where it does. */
final class PdfFacts {

	private PdfFacts() {
	}

	/**
	 * Write when it was made, in whole seconds, and make its identity, which is a digest
	 * of time and title, that of this time, too.
	 */
	static void date(PDDocument pdf, Instant made) throws IOException {
		Instant second = made.truncatedTo(ChronoUnit.SECONDS);
		pdf.getDocumentInformation().setCreationDate(GregorianCalendar.from(second.atZone(ZoneOffset.UTC)));
		pdf.setDocumentId(second.toEpochMilli());
		replace(pdf, "(<xmp:CreateDate>)[^<]*(</xmp:CreateDate>)", second.toString());
	}

	/** Write what it is called. */
	static void title(PDDocument pdf, String title) throws IOException {
		pdf.getDocumentInformation().setTitle(title);
		pdf.getDocumentInformation().setSubject(title);
		String text = HtmlUtils.htmlEscapeDecimal(title);
		replace(pdf, "(?s)(<dc:title>.*?<rdf:li[^>]*>)[^<]*(</rdf:li>)", text);
		replace(pdf, "(?s)(<dc:description>.*?<rdf:li[^>]*>)[^<]*(</rdf:li>)", text);
	}

	private static void replace(PDDocument pdf, String place, String text) throws IOException {
		PDMetadata metadata = pdf.getDocumentCatalog().getMetadata();
		String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
		metadata.importXMPMetadata(
				xmp.replaceFirst(place, "$1" + Matcher.quoteReplacement(text) + "$2").getBytes(StandardCharsets.UTF_8));
	}

}
