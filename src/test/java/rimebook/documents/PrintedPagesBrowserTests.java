package rimebook.documents;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.published.Standing;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Figures;

import static java.util.Locale.ENGLISH;
import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.documents.PrintedText.words;

/** Pages that correspond to a document, printed by a browser. */
@WholeApplication
@BrowserTest
class PrintedPagesBrowserTests {

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	PrintedPagesBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void publicPagesHaveEveryTeamItsPlaceAndWhatEachJudgeGave() {
		PaperDay day = PaperDay.placement(this.context);
		Page page = this.screens.opened(new Browser.NewContextOptions().setColorScheme(ColorScheme.DARK));
		String event = "/follow/" + day.small.competition().slug() + "/" + day.small.event().slug();
		String segment = event + "/" + day.small.event().segments().get(0).slug();
		Figures figures = new Figures(ENGLISH);
		for (String path : List.of(event, segment, segment + "/versions/" + day.segment().number())) {
			String text = print(page, path);
			Standing standing = path.equals(event) ? day.event().standing() : day.segment().standing();
			for (Standing.Row row : standing.rows()) {
				assertThat(text).containsPattern(
						words(figures.place(row.place())) + "(=shared)?[^0-9]{0,20}" + words(row.team() + row.club()));
				assertThat(text).contains(words(row.why().in(ENGLISH)));
				row.cards()
					.forEach((card) -> assertThat(text)
						.contains(figures.mark(card.first()) + figures.mark(card.second())));
			}
			assertThat(text).contains("Provisional", "Version");
		}
		assertThat(print(page, segment + "/order")).contains(teams(day));
	}

	@Test
	void pagesOfDesksHaveWhatTheySayAndNothingToPress() {
		PaperDay day = PaperDay.placement(this.context);
		day.rule();
		day.post();
		day.protest();
		String event = day.small.event().id().toString();
		String segment = day.small.segment(1).toString();
		Page page = this.screens.signedIn(Role.REFEREE);
		assertThat(print(page, "/desk/entries/" + event)).contains(teams(day));
		assertThat(print(page, "/desk/draw/" + segment)).contains(teams(day)).contains("seed1");
		assertThat(print(page, "/desk/panel/" + event))
			.contains(day.small.seats().stream().map((seat) -> words(seat.label() + seat.official().name())).toList());
		String results = print(page, "/desk/results/" + segment);
		Figures figures = new Figures(ENGLISH);
		day.segment()
			.standing()
			.rows()
			.forEach((row) -> assertThat(results).contains(words(figures.place(row.place()) + row.team() + row.club()),
					words(row.why().in(ENGLISH))));
		assertThat(print(page, "/desk/protests/" + segment)).contains(words("A sum is wrong."),
				words("It was keyed in wrongly."), words("Typed one key off."));
		assertThat(print(page, "/desk/rulings?competition=" + day.small.competition().id()))
			.contains(words("May we carry lanterns?"), "allowed");
		assertThat(print(page, "/desk/review/events/" + event)).contains(words("For the referee alone"), "Kendall");
		print(page, "/desk/record");
	}

	private static List<String> teams(PaperDay day) {
		return day.small.entries().stream().map((entry) -> words(entry.team().name())).toList();
	}

	/** What is on the sheets; each format in turn. */
	private String print(Page page, String path) {
		page.navigate(path);
		List<String> pressed = page.locator("button:not(.term):visible, .button:visible").allInnerTexts();
		page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
		assertThat(page.locator(":is(button:not(.term), .button, input, select, textarea, nav):visible").all()).as(path)
			.isEmpty();
		assertThat(page.evaluate("getComputedStyle(document.body).backgroundColor")).isEqualTo("rgba(0, 0, 0, 0)");
		assertThat(page.evaluate("getComputedStyle(document.body).color")).isEqualTo("rgb(0, 0, 0)");
		List<String> sheets = new ArrayList<>();
		for (String format : List.of("A4", "Letter")) {
			sheets.clear();
			sheets.addAll(read(page.pdf(new Page.PdfOptions().setFormat(format).setPreferCSSPageSize(false))));
			headingsComeAgain(page, sheets);
		}
		page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
		String text = String.join("", sheets);
		assertThat(text).as(path).contains(words("Printed"), words(this.screens.service() + path));
		pressed.stream()
			.filter((label) -> label.strip().contains(" "))
			.forEach((label) -> assertThat(text).as(path).doesNotContain(words(label)));
		return text;
	}

	/** A page of one table that takes several sheets has its headings on each of them. */
	private static void headingsComeAgain(Page page, List<String> sheets) {
		if (page.url().endsWith("/desk/record")) {
			assertThat(sheets).hasSizeGreaterThan(1);
			String headings = words(String.join("", page.locator("table.lines thead th").allTextContents()));
			assertThat(sheets).allSatisfy((sheet) -> assertThat(sheet).contains(headings));
		}
	}

	private static List<String> read(byte[] pdf) {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			List<String> sheets = new ArrayList<>();
			for (int sheet = 1; sheet <= document.getNumberOfPages(); sheet++) {
				PDFTextStripper stripper = new PDFTextStripper();
				stripper.setStartPage(sheet);
				stripper.setEndPage(sheet);
				sheets.add(words(stripper.getText(document)));
			}
			return sheets;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
