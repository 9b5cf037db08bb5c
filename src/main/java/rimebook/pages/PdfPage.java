package rimebook.pages;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.ISpringTemplateEngine;

/**
 * Turns a template into a PDF: the same template language, messages and escaping as a
 * page, laid out on paper.
 * <p>
 * The template is well-formed XML (each {@code <br/>
 * } is closed), has a {@code <title>} and inserts {@code fragments/paper :: style(size)}.
 * Its one typeface, which comes with PDFBox and is embedded, has every letter that is
 * written with Latin, Greek or Cyrillic script, in one weight: what is important is
 * large, since bold looks the same. Pictures are {@code data:} addresses; nothing is ever
 * fetched.
 */
@Component
public class PdfPage {

	private static final String TYPEFACE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

	static {
		// What cannot be laid out is thrown; the rest is chatter about speed.
		XRLog.setLoggingEnabled(false);
	}

	private final ISpringTemplateEngine templates;

	PdfPage(ISpringTemplateEngine templates) {
		this.templates = templates;
	}

	/**
	 * Lay out a template.
	 * @param template such as {@code panels/slips-pdf}
	 * @param language of the messages in it
	 * @param model what the template names
	 * @return the bytes of the document
	 */
	public byte[] of(String template, Locale language, Map<String, Object> model) {
		String text = this.templates.process(template, new Context(language, model));
		try (ByteArrayOutputStream document = new ByteArrayOutputStream()) {
			builder(text).toStream(document).run();
			return document.toByteArray();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The template " + template + " could not be laid out", ex);
		}
	}

	private static PdfRendererBuilder builder(String text) {
		return new PdfRendererBuilder().withHtmlContent(text, null)
			.useUriResolver((base, address) -> address.startsWith("data:") ? address : null)
			.useFont(PdfPage::typeface, "Paper")
			.withProducer("Rimebook");
	}

	private static InputStream typeface() {
		return Objects.requireNonNull(PDDocument.class.getResourceAsStream(TYPEFACE), TYPEFACE);
	}

}
