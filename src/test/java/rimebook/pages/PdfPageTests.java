package rimebook.pages;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.stream.StreamSupport;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.StaticMessageSource;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

import rimebook.testsupport.PaperStandards;

import static org.assertj.core.api.Assertions.assertThat;

class PdfPageTests {

	private static final String ACCENTS = "Jyväskylä Åbo Élan Škoda Żółw Ķegums Őrség Ívan’s <Crème> & “Brûlée” – 5°";

	private final StaticMessageSource messages = new StaticMessageSource();

	private static final Instant NOON = Instant.parse("2026-02-14T12:00:00Z");

	private final PdfPage pdf = new PdfPage(engine(), Clock.fixed(NOON, ZoneOffset.UTC));

	@Test
	void writesEveryAccentOfTheLatinLetters() throws IOException {
		try (PDDocument document = Loader.loadPDF(page(ACCENTS))) {
			assertThat(new PDFTextStripper().getText(document)).contains(ACCENTS);
		}
	}

	@Test
	void carriesItsTypefaceWithIt() throws IOException {
		try (PDDocument document = Loader.loadPDF(page("a"))) {
			PDResources resources = document.getPage(0).getResources();
			assertThat(StreamSupport.stream(resources.getFontNames().spliterator(), false)
				.map((name) -> font(resources, name))).isNotEmpty().allMatch(PDFont::isEmbedded);
		}
	}

	/** As the list of what is not ours says of it. */
	@Test
	void theLicenceOfTheTypefaceLiesBesideIt() throws IOException {
		try (InputStream licence = PdfPage.class.getResourceAsStream("/liberation/LICENSE")) {
			assertThat(new String(licence.readAllBytes(), StandardCharsets.UTF_8))
				.contains("SIL OPEN FONT LICENSE Version 1.1");
		}
		assertThat(Files.readString(Path.of("src/license/third-party.md.ftl")))
			.contains("Liberation, is under OFL-1.1");
	}

	@Test
	void fillsSheetsOfTheSizeThatTheTemplateNames() throws IOException {
		try (PDDocument document = Loader.loadPDF(page("a"))) {
			assertThat(document.getNumberOfPages()).isEqualTo(2);
			assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(841f, 843f);
			assertThat(document.getPage(0).getMediaBox().getHeight()).isBetween(594f, 596f);
		}
	}

	@Test
	void saysTheMessagesOfTheLanguageAndCarriesItsTitle() throws IOException {
		this.messages.addMessage("paper.words", Locale.FRENCH, "Fiche de jury");
		try (PDDocument document = Loader.loadPDF(page("a"))) {
			assertThat(new PDFTextStripper().getText(document)).contains("Fiche de jury");
			assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Blatt a");
			assertThat(document.getDocumentInformation().getProducer()).isEqualTo("Rimebook");
		}
	}

	@Test
	void isBoldAndItalicWhereTheTemplateSaysSo() throws IOException {
		try (PDDocument document = Loader.loadPDF(page("a"))) {
			PDResources resources = document.getPage(0).getResources();
			assertThat(StreamSupport.stream(resources.getFontNames().spliterator(), false)
				.map((name) -> font(resources, name).getName().replaceFirst(".*[+]", ""))).containsExactlyInAnyOrder(
						"LiberationSans", "LiberationSans-Bold", "LiberationSans-Italic", "LiberationSans-BoldItalic");
		}
	}

	@Test
	void sameWordsOfTheSameTimeAreTheSameBytes() throws IOException {
		byte[] document = page(ACCENTS);
		assertThat(page(ACCENTS)).isEqualTo(document);
		try (PDDocument read = Loader.loadPDF(document)) {
			assertThat(read.getDocumentInformation().getCreationDate().toInstant()).isEqualTo(NOON);
		}
	}

	/** ISO 19005-2 and ISO 14289-1, as veraPDF checks them. */
	@Test
	void keepsToTheStandardsForArchivesAndForScreenReaders() {
		assertThat(PaperStandards.faults(page(ACCENTS))).isEmpty();
	}

	private byte[] page(String words) {
		return this.pdf.of("pages/sample-pdf", Locale.FRENCH, Map.of("words", words, "key", "paper.words"));
	}

	private SpringTemplateEngine engine() {
		ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
		resolver.setPrefix("templates/");
		resolver.setSuffix(".html");
		SpringTemplateEngine engine = new SpringTemplateEngine();
		engine.setTemplateResolver(resolver);
		this.messages.setUseCodeAsDefaultMessage(true);
		engine.setTemplateEngineMessageSource(this.messages);
		return engine;
	}

	private static PDFont font(PDResources resources, COSName name) {
		try {
			return resources.getFont(name);
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
