package rimebook.rehearsal;

import java.io.IOException;
import java.net.HttpCookie;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;
import tools.jackson.databind.json.JsonMapper;

import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.PaperStandards;
import rimebook.testsupport.ScannedPaper;
import rimebook.testsupport.Visitor;

import static org.assertj.core.api.Assertions.assertThat;

/** What a service of the profile gives away, by every link that anybody is shown. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = { "spring.datasource.url=jdbc:h2:mem:demo-panel;DB_CLOSE_DELAY=-1", "rimebook.demo.paused=true" })
@ActiveProfiles({ "demo", "rehearsal" })
class MarkedPagesIntegrationTests {

	private static final Pattern ADDRESS = Pattern.compile("https?://[^\\s/]+");

	private static final String ID = "[0-9a-f]{8}-[0-9a-f-]{27}";

	/** Checking them by the standards takes seconds each, and they have one layout. */
	private static final int SHEETS_CHECKED = 4;

	@Autowired
	private SimulatedPanel panel;

	@Autowired
	private KnownCodes codes;

	@Autowired
	private Panels panels;

	@LocalServerPort
	private int port;

	private final TreeMap<String, String> unmarked = new TreeMap<>();

	private final Set<String> shapes = new HashSet<>();

	private final Set<String> data = new TreeSet<>();

	private final Set<String> kinds = new HashSet<>();

	private int sheets;

	private int scanned;

	@Test
	void everyPageAndEverySheetSaysRehearsal() throws IOException {
		walk(new Visitor(this.port), List.of("/", "/sign-in", "/judge", "/judge/waiting", "/no-such-page",
				"/set-up/no-such-token", "/problems/card-closed"));
		walk(Visitor.signedIn(this.port, "admin", "snow-on-the-roof"), List.of("/desk", "/desk/no-such-page"));
		assertThat(this.unmarked).isEmpty();
		assertThat(this.shapes).hasSizeGreaterThan(60)
			.contains("/", "/desk", "/sign-in", "/desk/stand/*", "/desk/technical/*", "/desk/results/*")
			.anyMatch((shape) -> shape.endsWith("/board"));
		assertThat(this.sheets).isGreaterThan(10);
		assertThat(this.scanned).as("drawings on paper").isGreaterThan(2);
		assertThat(this.data).anyMatch((path) -> path.contains("/desk/record/lines.csv"))
			.anyMatch((path) -> path.contains("/desk/record/lines.jsonl"))
			.anyMatch((path) -> path.contains("/desk/review/"))
			.anyMatch((path) -> path.contains("/desk/entries/export/"));
	}

	/** What programs fetch, packed or not. */
	@Test
	void dataSayIt() {
		Visitor program = new Visitor(this.port);
		String segment = "/api/public/competitions/lantern-weekend/events/adult/segments/free-skating";
		for (String path : List.of("/api/public/competitions", segment, segment + "/order", segment + ".csv",
				"/api/public/competitions/no-such", "/api/no-such")) {
			for (int again = 0; again < 2; again++) {
				HttpResponse<String> answer = program.json("GET", path, "", "Accept-Encoding", "gzip");
				assertThat(answer.headers().firstValue("content-encoding")).as(path).isEmpty();
				expectMarkedData(path, answer.headers().firstValue("content-type").orElse(""), answer.body());
			}
		}
		assertThat(this.unmarked).isEmpty();
		assertThat(this.data).hasSize(6);
	}

	@Test
	void aTabletSaysIt() {
		SeatView seat = this.panels.judges(this.panel.look().event().id()).get(3);
		Visitor judge = new Visitor(this.port);
		Visitor.Page card = judge.open("/judge?code=" + this.codes.orNew(seat).replace(" ", "")).press("form");
		assertThat(card.document().selectFirst(".card")).isNotNull();
		expectMarked("the card", card.document(), "Rehearsal");
		assertThat(this.unmarked).isEmpty();
	}

	@Test
	void publicPagesSayItInTheirLanguage() {
		Visitor visitor = new Visitor(this.port);
		Document home = visitor.open("/").document();
		expectMarked("French", visitor.open(home.selectFirst(".languages a[hreflang=fr]").attr("href")).document(),
				"Répétition");
		expectMarked("Finnish", visitor.open(home.selectFirst(".languages a[hreflang=fi]").attr("href")).document(),
				"Harjoitus");
		assertThat(this.unmarked).isEmpty();
	}

	/** A browser keeps one box of cookies for all ports of a host. */
	@Test
	void noCookieHasANameOfTheRealService() {
		Visitor visitor = new Visitor(this.port);
		List<HttpCookie> given = visitor.bytes("/sign-in")
			.headers()
			.allValues("set-cookie")
			.stream()
			.flatMap((line) -> HttpCookie.parse(line).stream())
			.toList();
		assertThat(given).isNotEmpty()
			.allMatch((cookie) -> cookie.getName().startsWith(OwnCookies.PREFIX))
			.allMatch((cookie) -> cookie.getMaxAge() > 0 && cookie.getMaxAge() <= OwnCookies.LIFE);
		assertThat(OwnCookies.outgoing("a=1; Path=/; Max-Age=31536000; Expires=Mon, 01 Jan 2029 00:00:00 GMT; Secure"))
			.startsWith("rehearsal-a=1; Path=/; Secure; Max-Age=43200; Expires=")
			.doesNotContain("2029");
		assertThat(OwnCookies.outgoing("a=; Max-Age=0; Path=/")).isEqualTo("rehearsal-a=; Max-Age=0; Path=/");
		assertThat(OwnCookies.incoming("rimebook=1; rehearsal-rimebook=2;rimebook-seat=3; rehearsal-rimebook-seat=4"))
			.isEqualTo("rimebook=2; rimebook-seat=4");
		assertThat(OwnCookies.incoming("rimebook=1")).isEmpty();
	}

	private void walk(Visitor visitor, List<String> from) throws IOException {
		Deque<String> ahead = new ArrayDeque<>(from);
		Set<String> seen = new HashSet<>();
		while (!ahead.isEmpty()) {
			String path = ahead.pop();
			if (!seen.add(shape(path))) {
				continue;
			}
			HttpResponse<byte[]> answer = visitor.bytes(path);
			String type = answer.headers().firstValue("content-type").orElse("");
			if (type.startsWith("text/html")) {
				this.shapes.add(shape(path));
				assertThat(answer.headers().firstValue("x-robots-tag")).as(path).hasValue("noindex");
				Document page = Jsoup.parse(new String(answer.body(), StandardCharsets.UTF_8),
						"http://localhost:" + this.port + path);
				expectMarked(path, page, "Rehearsal");
				page.select("a[href^=http]").forEach((link) -> expectLeadsHere(path, link.attr("href")));
				page.select("a[href]")
					.stream()
					.map((link) -> link.absUrl("href").replaceAll("#.*", ""))
					.filter((link) -> link.startsWith("http://localhost:" + this.port + "/"))
					.map((link) -> link.substring(("http://localhost:" + this.port).length()))
					.forEach(ahead::add);
			}
			else if (type.startsWith("application/pdf")) {
				expectMarked(path, answer.body());
			}
			else if (type.startsWith("text/csv") || type.contains("json")) {
				expectMarkedData(path, type, new String(answer.body(), StandardCharsets.UTF_8));
			}
			answer.headers()
				.firstValue("content-disposition")
				.ifPresent((name) -> assertThat(name).as(path).contains("filename=\"rehearsal-"));
		}
	}

	/** One page of each kind is enough. */
	private static String shape(String path) {
		return path.replaceAll("\\?.*", "").replaceAll(ID, "*").replaceAll("/\\d+(?=/|$)", "/*");
	}

	private void expectMarked(String path, Document page, String word) {
		boolean marked = word.equals(page.select("html").attr("data-rehearsal"))
				&& page.select("body > .rehearsal-band:first-child strong").text().equals(word)
				&& page.title().startsWith(word + ": ") && page.select("meta[name=robots]").hasAttr("content");
		if (!marked) {
			this.unmarked.put(path, page.select("head, .rehearsal-band").outerHtml());
		}
	}

	private void expectMarkedData(String path, String type, String text) {
		this.data.add(path);
		boolean marked = type.startsWith("text/csv")
				? text.lines().findFirst().orElse("").endsWith(",rehearsal") && text.strip().endsWith(",rehearsal")
				: text.lines().findFirst().orElse("").startsWith("{\"rehearsal\":true");
		if (!marked) {
			this.unmarked.put(path, type + " " + text.substring(0, Math.min(300, text.length())));
		}
	}

	/** Nothing here sends its reader to the real service, or anywhere else. */
	private void expectLeadsHere(String path, String address) {
		if (URI.create(address).getPort() != this.port) {
			this.unmarked.put(path + " leads to", address);
		}
	}

	/** Of each kind of paper one is scanned. */
	private void scan(String path, PDDocument pdf) throws IOException {
		if (this.kinds.add(path.replaceAll("/[^/]*$", "").replaceAll(ID, "*"))) {
			Optional<String> drawn = ScannedPaper.of(pdf);
			drawn.ifPresent((address) -> {
				expectLeadsHere(path, address);
				this.scanned++;
			});
		}
	}

	private void expectMarked(String path, byte[] document) throws IOException {
		try (PDDocument pdf = Loader.loadPDF(document)) {
			scan(path, pdf);
			PDFTextStripper text = new PDFTextStripper();
			for (int sheet = 1; sheet <= pdf.getNumberOfPages(); sheet++) {
				text.setStartPage(sheet);
				text.setEndPage(sheet);
				String words = text.getText(pdf);
				ADDRESS.matcher(words).results().forEach((found) -> expectLeadsHere(path, found.group()));
				if (!words.contains("Rehearsal Nothing here counts")) {
					this.unmarked.put(path + " sheet " + sheet, words);
				}
				this.sheets++;
			}
		}
		if (this.sheets < SHEETS_CHECKED) {
			assertThat(PaperStandards.faults(document)).as(path).isEmpty();
		}
	}

}
