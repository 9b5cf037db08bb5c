package rimebook.crawl;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryView;
import rimebook.entries.Renaming;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What a results desk prints of public pages and hangs on a wall: no sheet that says
 * nothing, no number in two pieces, names as long as any.
 */
@WholeApplication
@BrowserTest
class PrintedPagesBrowserTests {

	private static final String LONG = "The Northern Lanterns of Lake Everwinter Skating Society, Second Team";

	/** Between the margins of a sheet of A4, in CSS pixels. */
	private static final int WIDTH = 680;

	/** Numbers, marks with a stroke between and words of a head that take two lines. */
	private static final String BROKEN = """
			() => {
				const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
				const broken = [];
				while (texts.nextNode()) {
					const text = texts.currentNode;
					if (text.parentElement.closest(".unseen") || !text.parentElement.checkVisibility()) continue;
					const words = text.parentElement.closest("thead") ? /\\S+/g : /^\\s*[-+−]?[\\d.,/ ]+\\s*$/g;
					for (const word of text.data.matchAll(words)) {
						const range = document.createRange();
						range.setStart(text, word.index);
						range.setEnd(text, word.index + word[0].length);
						if (new Set([...range.getClientRects()].map((line) => Math.round(line.top))).size > 1) {
							broken.push(word[0].trim() + " in " + text.parentElement.outerHTML.slice(0, 150));
						}
					}
				}
				return broken;
			}""";

	/** Heads of columns that stand over each other. */
	private static final String OVERLAPPING = """
			() => {
				const text = (head) => {
					const range = document.createRange();
					range.selectNodeContents(head);
					return range.getBoundingClientRect();
				};
				const heads = [...document.querySelectorAll("thead th")].filter((head) => head.checkVisibility() && text(head).width > 0);
				const over = (one, other) => one.right > other.left && one.top < other.bottom - 2 && other.top < one.bottom - 2;
				return heads.filter((head, at) => at > 0 && heads[at - 1].parentNode === head.parentNode && over(text(heads[at - 1]), text(head)))
					.map((head) => head.textContent);
			}""";

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	PrintedPagesBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@ParameterizedTest
	@ValueSource(strings = { "MAJORITY", "POINTS" })
	void everySheetSaysSomethingAndNoNumberIsBroken(JudgingMethod method) throws IOException {
		SmallCompetition small = posted(method);
		String event = "/follow/" + small.competition().slug() + "/" + small.event().slug();
		List<String> paths = Stream
			.concat(Stream.of(event),
					small.event()
						.segments()
						.stream()
						.map(SegmentView::slug)
						.flatMap((segment) -> Stream.of(event + "/" + segment, event + "/" + segment + "/order")))
			.toList();
		Page page = this.screens.screen(WIDTH, 960);
		page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
		for (String path : paths) {
			page.navigate(path);
			Looks.draw(page, "print-" + method.name() + path.substring(event.length()).replace('/', '-'));
			assertThat((List<?>) page.evaluate(BROKEN)).as(path).isEmpty();
			assertThat((List<?>) page.evaluate(OVERLAPPING)).as(path).isEmpty();
			assertThat(page.evaluate("document.documentElement.scrollWidth")).as(path).isEqualTo(WIDTH);
			List<String> sheets = sheets(page.pdf(new Page.PdfOptions().setFormat("A4")));
			assertThat(sheets).as(path).hasSizeLessThan(5).noneMatch(String::isBlank);
			assertThat(String.join(" ", sheets).replaceAll("\\s+", " ")).as(path)
				.contains(LONG, "Club 2", small.event().name());
		}
	}

	private SmallCompetition posted(JudgingMethod method) {
		boolean points = method == JudgingMethod.POINTS;
		SmallCompetition small = SmallCompetition.running(this.context, 12,
				points ? CompetitionFixtures.aPointsEvent("Senior", 5) : CompetitionFixtures.anEvent("Junior", 9));
		EntryView entry = small.entries().get(0);
		Renaming renaming = this.context.getBean(Renaming.class);
		Renaming.KnownTeam known = renaming.team(entry.team().id());
		renaming.change(new Renaming.ChangeTeam(entry.team().id(), known.version(), LONG + " " + method, ""),
				SmallCompetition.SECRETARY);
		CrawledDay day = new CrawledDay(small, this.context);
		if (points) {
			day.skateAll();
		}
		else {
			small.open(1);
			small.skateRest(1);
			small.open(2);
			small.skateRest(2);
		}
		day.post();
		return small;
	}

	private static List<String> sheets(byte[] pdf) throws IOException {
		List<String> sheets = new ArrayList<>();
		try (PDDocument document = Loader.loadPDF(pdf)) {
			for (int number = 1; number <= document.getNumberOfPages(); number++) {
				PDFTextStripper text = new PDFTextStripper();
				text.setStartPage(number);
				text.setEndPage(number);
				sheets.add(text.getText(document));
			}
		}
		return sheets;
	}

}
