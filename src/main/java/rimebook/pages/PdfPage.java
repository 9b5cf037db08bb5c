package rimebook.pages;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.ISpringTemplateEngine;

/**
 * Turns a template into a PDF: the same template language, messages and escaping as a
 * page, laid out on paper. What comes out is PDF/A-2 and tagged, so that it can be read
 * in many years and by a screen reader.
 * <p>
 * The template is well-formed XML, inserts {@code fragments/paper :: basics(title, size)}
 * and says its language. Its typeface, which is embedded, has every letter that is
 * written with Latin, Greek or Cyrillic script, upright, bold and italic. Pictures are
 * {@code data:} addresses with words for those who cannot see them; nothing is ever
 * fetched.
 */
@Component
public class PdfPage {

	private static final String TYPEFACE = "/liberation/LiberationSans-%s.ttf";

	private static final int NORMAL = 400;

	private static final int BOLD = 700;

	private static final byte[] SCREEN_COLOURS = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

	static {
		// What cannot be laid out is thrown; the rest is chatter about speed.
		XRLog.setLoggingEnabled(false);
	}

	private final ISpringTemplateEngine templates;

	private final Clock clock;

	PdfPage(ISpringTemplateEngine templates, Clock clock) {
		this.templates = templates;
		this.clock = clock;
	}

	/**
	 * Lay out a template that is made now.
	 * @param template such as {@code panels/slips-pdf}
	 * @param language of the messages in it
	 * @param model what the template names
	 * @return the bytes of the document
	 */
	public byte[] of(String template, Locale language, Map<String, Object> model) {
		return of(template, language, model, this.clock.instant());
	}

	/**
	 * Lay out a template. The same words made at the same time are the same bytes.
	 * @param template such as {@code documents/segment-result}
	 * @param language of the messages in it
	 * @param model what the template names
	 * @param made when what it says was so, UTC; kept in the document in whole seconds
	 * @return the bytes of the document
	 */
	public byte[] of(String template, Locale language, Map<String, Object> model, Instant made) {
		String text = this.templates.process(template, new Context(language, model));
		try (ByteArrayOutputStream document = new ByteArrayOutputStream();
				PDDocument pdf = new PDDocument();
				PdfBoxRenderer renderer = builder(text, pdf).buildPdfRenderer()) {
			renderer.createPDFKeepOpen();
			PdfFacts.date(pdf, made);
			pdf.save(document);
			return document.toByteArray();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The template " + template + " could not be laid out", ex);
		}
	}

	private static PdfRendererBuilder builder(String text, PDDocument pdf) {
		PdfRendererBuilder builder = new PdfRendererBuilder().withHtmlContent(text, null)
			.useUriResolver((base, address) -> address.startsWith("data:") ? address : null)
			.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A)
			.usePdfUaAccessibility(true)
			.useColorProfile(SCREEN_COLOURS)
			.withProducer("Rimebook")
			.usePDDocument(pdf);
		addFace(builder, pdf, "Regular", NORMAL, FontStyle.NORMAL);
		addFace(builder, pdf, "Bold", BOLD, FontStyle.NORMAL);
		addFace(builder, pdf, "Italic", NORMAL, FontStyle.ITALIC);
		addFace(builder, pdf, "BoldItalic", BOLD, FontStyle.ITALIC);
		return builder;
	}

	private static void addFace(PdfRendererBuilder builder, PDDocument pdf, String face, int weight, FontStyle style) {
		builder.useFont(new PDFontSupplier(null) {

			/** Only what is used is read. */
			@Override
			public PDFont supply() {
				return typeface(pdf, TYPEFACE.formatted(face));
			}

		}, "Paper", weight, style, true);
	}

	/** Without ligatures: looking for them takes a third of the time of a long sheet. */
	private static PDFont typeface(PDDocument pdf, String file) {
		try (InputStream bytes = Objects.requireNonNull(PdfPage.class.getResourceAsStream(file), file)) {
			TrueTypeFont typeface = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
			typeface.setEnableGsub(false);
			return PDType0Font.load(pdf, typeface, true);
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The typeface " + file + " cannot be read", ex);
		}
	}

}
