package rimebook.live;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;

import javax.imageio.ImageIO;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

import rimebook.entries.Entries;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.clearInvocations;
import static org.mockito.Mockito.never;

@LiveTest
class PublicPagesIntegrationTests {

	private static final String FREE = "/follow/fjord-days/junior/free-skating";

	private static final List<String> PROTECTION = List.of("Content-Security-Policy", "X-Content-Type-Options",
			"X-Frame-Options", "X-XSS-Protection", "Referrer-Policy");

	@Autowired
	private Visitor visitor;

	@Autowired
	private Entries entries;

	private final Stage stage = new Stage();

	@BeforeEach
	void afterNineTeams() {
		IntStream.range(0, 9).forEach((i) -> this.stage.free().skate());
		this.stage.free().call();
		this.visitor.watch(this.stage);
	}

	@Test
	void standingSaysHowFarHowCertainAndWhy() {
		String page = this.visitor.get(FREE).body();
		assertThat(page).contains("After 9 of 12 teams", "Provisional", "Version 9", "14 February, 13:12 EET");
		assertThat(page).contains("On the ice now", "Marks and why: Alder", "Judges in the majority");
		assertThat(page).contains("Majority of ordinals; 7 judges", "Tarnholt Skating Rules, edition of 2025",
				"and its officials decide");
	}

	@Test
	void nobodyOfTheCrewIsNamed() {
		for (String path : List.of(FREE, FREE + "/order", FREE + "/versions", "/api/public/competitions/fjord-days",
				api("free-skating"), api("short-programme"), api("free-skating") + "/order")) {
			assertThat(this.visitor.get(path).body()).as(path)
				.doesNotContain("Somebody", "Poster", "Referee\"", "Accountant");
		}
	}

	@Test
	void whyATeamWithdrewIsNobodysBusiness() {
		this.stage.free().withdraw();
		this.visitor.watch(this.stage);
		assertThat(this.visitor.get(FREE + "/versions").body()).contains("The state of a team changed")
			.doesNotContain("Illness");
		assertThat(this.visitor.get(api("free-skating")).body()).contains("\"STATUS\"").doesNotContain("Illness");
	}

	@Test
	void partIsThePageWithoutItsFrame() {
		String part = this.visitor.get(FREE + "?part=live").body();
		assertThat(part).startsWith("<div id=\"live\"").doesNotContain("<html", "<h1");
		assertThat(this.visitor.get(FREE).body()).contains(part);
	}

	@Test
	void readsInThreeLanguages() {
		assertThat(this.visitor.get(FREE + "?lang=fr").body()).contains("<html", "lang=\"fr\"",
				"Après 9 équipes sur 12", "/follow/fjord-days/junior?lang=fr", "part=live&amp;lang=fr");
		assertThat(this.visitor.get(FREE, "Accept-Language", "fi-FI,fi;q=0.9").body()).contains("Nyt jäällä")
			.doesNotContain("junior?lang=");
		assertThat(this.visitor.get(FREE + "?lang=xx", "Accept-Language", "*").body()).contains("On the ice now");
	}

	@Test
	void sameBytesAreNotSentTwice() {
		HttpResponse<String> first = this.visitor.get(FREE);
		String tag = first.headers().firstValue("ETag").orElseThrow();
		assertThat(tag).startsWith("\"").doesNotStartWith("W/");
		assertThat(first.headers().firstValue("Cache-Control")).hasValue(Answer.CACHING);
		HttpResponse<String> again = this.visitor.get(FREE, "If-None-Match", "\"other\", " + tag);
		assertThat(again.statusCode()).isEqualTo(304);
		assertThat(again.body()).isEmpty();
		assertThat(this.visitor.get(FREE, "If-None-Match", "\"other\"").statusCode()).isEqualTo(200);
	}

	@Test
	void compressesForThoseWhoTakeIt() throws IOException {
		String plain = this.visitor.get(FREE).body();
		HttpResponse<byte[]> zipped = this.visitor.bytes(FREE, "Accept-Encoding", "br, gzip");
		assertThat(zipped.headers().firstValue("Content-Encoding")).hasValue("gzip");
		assertThat(zipped.headers().firstValue("ETag"))
			.isNotEqualTo(this.visitor.get(FREE).headers().firstValue("ETag"));
		try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(zipped.body()))) {
			assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).isEqualTo(plain);
		}
		assertThat(this.visitor.get(FREE, "Accept-Encoding", "gzip;q=0").body()).isEqualTo(plain);
	}

	@Test
	void refreshIsSmall() {
		assertThat(this.visitor.bytes(FREE + "?part=live", "Accept-Encoding", "gzip").body().length)
			.isLessThan(8 * 1024);
	}

	@Test
	void whoHasThePageIsSentWhatDiffers() {
		String page = this.visitor.get(FREE).body();
		ResultVersion version = this.stage.free().skate();
		this.visitor.publish(version.scopeId(), version.number());
		String since = "&since=" + Jsoup.parse(page).getElementById("live").attr("data-tag");
		HttpResponse<String> difference = this.visitor.get(FREE + "?part=live" + since);
		String whole = this.visitor.get(FREE + "?part=live").body();
		assertThat(difference.body()).contains("After 10 of 12 teams", "data-kept")
			.hasSizeLessThan(whole.length() * 3 / 4);
		assertThat(this.visitor.get(FREE + "?part=live&moment=7" + since).body()).isEqualTo(difference.body());
		assertThat(this.visitor.get(FREE + "?part=live&since=0123456789ab").body()).isEqualTo(whole);
		assertThat(this.visitor.get(FREE + "?part=live&since=%22").body()).isEqualTo(whole);
		assertThat(this.visitor.get(FREE + "?since=0123456789ab").body()).contains("<html");
		assertThat(difference.headers().firstValue("ETag"))
			.isNotEqualTo(this.visitor.get(FREE + "?part=live").headers().firstValue("ETag"));
	}

	/** Where jsoup, a parser for anybody's pages, finds rows and what they open. */
	@ParameterizedTest
	@ValueSource(strings = { FREE, "/follow/fjord-days/junior/short-programme", "/follow/fjord-days/junior",
			"/follow/fjord-days", FREE + "/order", FREE + "/pictures", FREE + "/versions", FREE + "/versions/3",
			"/follow/fjord-days/timetable", "/follow/fjord-days/board", "/follow/fjord-days/board/standing" })
	void partIsCutWhereAParserWouldCutIt(String address) {
		String page = this.visitor.get(address).body();
		MovingPart part = MovingPart.in(page).orElseThrow();
		Element live = Jsoup.parse(page).getElementById("live");
		assertThat(live.attr("data-tag")).isEqualTo(part.tag());
		assertThat(part.pieces().stream().map(MovingPart.Piece::identity))
			.containsExactlyElementsOf(live.select("tbody[id], details[id]").eachAttr("id"));
		for (MovingPart.Piece piece : part.pieces()) {
			Element found = live.getElementById(piece.identity());
			String cut = part.text().substring(piece.from(), piece.to());
			assertThat(alone(cut, piece.element())).isEqualTo(found.outerHtml());
			assertThat(piece.lines().stream().map((line) -> line.cells().size()))
				.containsExactlyElementsOf(piece.element().equals("details")
						? found.select("tr").stream().map((line) -> line.childrenSize()).toList() : List.of());
		}
	}

	private static String alone(String cut, String element) {
		return Jsoup.parse(element.equals("tbody") ? "<table>" + cut + "</table>" : cut)
			.expectFirst(element)
			.outerHtml();
	}

	@Test
	void keptPageIsProtectedLikeARenderedOne() {
		HttpResponse<String> rendered = this.visitor.get("/follow/fjord-days/junior");
		HttpResponse<String> kept = this.visitor.get("/follow/fjord-days/junior");
		for (String header : PROTECTION) {
			assertThat(kept.headers().firstValue(header)).as(header)
				.isPresent()
				.isEqualTo(rendered.headers().firstValue(header));
		}
		assertThat(kept.headers().firstValue("Cache-Control"))
			.isEqualTo(rendered.headers().firstValue("Cache-Control"));
		assertThat(kept.headers().firstValue("Set-Cookie")).isEmpty();
		assertThat(rendered.headers().firstValue("Set-Cookie")).isEmpty();
	}

	@Test
	void keptPageAsksNobody() {
		this.visitor.get(FREE);
		clearInvocations(this.entries);
		for (int i = 0; i < 50; i++) {
			this.visitor.get(FREE);
		}
		then(this.entries).should(never()).ofEvent(any());
	}

	@Test
	void pageFetchedAfterAPublicationHasIt() {
		assertThat(this.visitor.get(FREE).body()).contains("Version 9");
		ResultVersion version = this.stage.free().skate();
		this.visitor.publish(version.scopeId(), version.number());
		assertThat(this.visitor.get(FREE).body()).contains("Version 10");
		this.stage.free().call();
		this.visitor.publishIce(this.stage.freeSkating.id());
		assertThat(this.visitor.get(FREE + "?part=live&moment=x").body()).contains("On the ice now");
	}

	@Test
	void lostSignalCostsNothing() {
		assertThat(this.visitor.get(FREE).body()).contains("Version 9");
		this.stage.free().skate();
		await().untilAsserted(() -> assertThat(this.visitor.get(FREE).body()).contains("Version 10"));
	}

	@Test
	void headlineIsInTitleAndDataToo() {
		String said = "With three teams left, Alder leads the event";
		assertThat(this.visitor.get(FREE).body()).contains("<title>Junior, Free skating – " + said,
				"data-title=\"Junior, Free skating – " + said, "data-heard=\"" + said);
		assertThat(this.visitor.get("/follow/fjord-days").body()).contains("Junior, Free skating: " + said);
		assertThat(this.visitor.get("/follow/fjord-days/board").body()).contains(said);
		assertThat(this.visitor.get(api("free-skating")).body()).contains("\"headline\":\"" + said, "\"justIn\":{");
		assertThat(this.visitor.get("/api/public/competitions/fjord-days").body()).contains("\"headline\":\"Junior");
	}

	@Test
	void addressGoesAboutWithThePictureOfItsStanding() throws IOException {
		String page = this.visitor.get(FREE + "?lang=fr").body();
		assertThat(page).contains("property=\"og:image\" content=\"" + FREE + "/share/9.png?lang=fr\"")
			.containsPattern("og:description\" content=\"[^\"]*Alder");
		for (String address : List.of(FREE + "/share/9.png?lang=fr", FREE + "/share/3.png",
				"/follow/fjord-days/junior/share/9.png")) {
			HttpResponse<byte[]> picture = this.visitor.bytes(address);
			assertThat(picture.headers().firstValue("Content-Type")).as(address).hasValue("image/png");
			BufferedImage drawn = ImageIO.read(new ByteArrayInputStream(picture.body()));
			assertThat(List.of(drawn.getWidth(), drawn.getHeight())).containsExactly(1200, 630);
			assertThat(IntStream.range(0, 1200).map((x) -> drawn.getRGB(x, 155)).distinct().count())
				.as("letters of the title")
				.isGreaterThan(3);
		}
		assertThat(this.visitor.get(FREE + "/share/99.png").statusCode()).isEqualTo(404);
	}

	@Test
	void ceremonyCallsUpNobodyBeforeTheResultIsPublished() {
		String ceremony = "/follow/fjord-days/junior/ceremony";
		for (String step : List.of("", "/1", "/3")) {
			assertThat(this.visitor.get(ceremony + step).body()).as(step)
				.contains("The result is not published yet.")
				.doesNotContain("class=\"called\"", "Alder");
		}
		IntStream.range(0, 3).forEach((i) -> this.stage.free().skate());
		this.stage.free().sign();
		this.visitor.watch(this.stage);
		List<Standing.Row> rows = this.stage.eventVersions.get(this.stage.eventVersions.size() - 1).standing().rows();
		String winner = rows.get(0).team().replace("&", "&amp;");
		assertThat(this.visitor.get(ceremony).body()).doesNotContain("class=\"called\"").contains("/ceremony/1");
		assertThat(this.visitor.get(ceremony + "/1").body()).contains("3rd").doesNotContain(winner);
		assertThat(this.visitor.get(ceremony + "/3").body()).contains("3rd", "2nd", "1st", winner)
			.doesNotContain("rel=\"next\"");
	}

	@Test
	void screenBetweenTwoTeamsShowsWhoComesAndTheStanding() {
		this.stage.free().skate();
		this.visitor.watch(this.stage);
		String board = this.visitor.get("/follow/fjord-days/board").body();
		assertThat(board.split("class=\"turn\"", -1)).hasSizeGreaterThan(3);
		assertThat(board).contains("The next team is called soon.", "No. 11", "Next<", "After that<")
			.doesNotContain("On the ice now");
		assertThat(this.visitor.get("/follow/fjord-days/board/standing").body()).contains("1.", "Alder");
		assertThat(this.visitor.get("/follow/fjord-days/board/timetable").body())
			.contains("No timetable is published yet.");
	}

	@Test
	void wordsOfTheTradeOpenWhereTheyStand() {
		String page = this.visitor.get(FREE).body();
		assertThat(page).contains("popovertarget=\"word-majority\"", "popovertarget=\"word-provisional\"");
		for (String word : List.of("majority", "ordinal", "two-marks", "provisional", "version")) {
			assertThat(page.split("id=\"word-" + word + "\"", -1)).as(word).hasSize(2);
		}
	}

	@Test
	void lastTeamIsNewsUntilTheNext() {
		ResultVersion version = this.stage.free().versions.get(8);
		String last = this.stage.free().lastSkated().orElseThrow();
		String page = this.visitor.get(FREE).body();
		assertThat(page).contains("class=\"just-in\"", "href=\"#entry-" + last);
		assertThat(page.split("Just in<", -1)).hasSize(3);
		assertThat(version.standing().rows()).anyMatch((row) -> row.entry().equals(last));
		this.stage.free().sign();
		this.visitor.watch(this.stage);
		assertThat(this.visitor.get(FREE).body()).doesNotContain("Just in");
	}

	@Test
	void anyTwoTeamsAreExplained() {
		List<Standing.Row> rows = this.stage.free().versions.get(8).standing().rows();
		for (int i = 1; i < rows.size(); i++) {
			String pair = "/why/" + rows.get(i).entry() + "/" + rows.get(0).entry();
			assertThat(this.visitor.get(FREE + pair).body()).as(pair)
				.contains(rows.get(0).team() + " (1st) is ahead of " + rows.get(i).team() + " (", "Version 9",
						FREE + "/why/" + rows.get(0).entry() + "/" + rows.get(i).entry() + "/9");
			assertThat(this.visitor.get(api("free-skating") + pair).body()).contains("\"version\":9",
					"\"ahead\":\"" + rows.get(0).entry(), "is ahead of");
		}
	}

	@Test
	void comparisonSpeaksOfItsVersionForEver() {
		List<Standing.Row> rows = this.stage.free().versions.get(3).standing().rows();
		String pair = "/why/" + rows.get(0).entry() + "/" + rows.get(1).entry();
		assertThat(this.visitor.get(FREE + pair + "/4").body()).contains("Version 4 is superseded by version 9.",
				"After 4 of 12 teams", "is ahead of");
		String last = this.stage.free().lastSkated().orElseThrow();
		assertThat(this.visitor.get(FREE + "/why/" + rows.get(0).entry() + "/" + last + "/4").body())
			.contains("These two teams are not both in version 4");
		assertThat(this.visitor.get(FREE + pair + "/77").statusCode()).isEqualTo(404);
		assertThat(this.visitor.get(FREE + "/why/" + last + "/" + last).statusCode()).isEqualTo(404);
		assertThat(this.visitor.get(FREE + "/why/" + last + "/00000000-0000-0000-0000-000000000000").statusCode())
			.isEqualTo(404);
	}

	/** The totals of this stage are made up: nothing that made them can be said. */
	@Test
	void aPlaceIsNeverExplainedByWhatDidNotMakeIt() {
		List<Standing.Row> rows = this.stage.free().versions.get(8).standing().rows();
		String page = this.visitor
			.get("/follow/fjord-days/junior/why/" + rows.get(0).entry() + "/" + rows.get(1).entry())
			.body();
		assertThat(page).contains("made by rules that the event no longer has", FREE + "/why/")
			.doesNotContain("is ahead of");
	}

	@Test
	void choiceOfTwoTeamsLeadsToTheirAddress() {
		List<Standing.Row> rows = this.stage.free().versions.get(8).standing().rows();
		String one = rows.get(0).entry();
		String other = rows.get(1).entry();
		this.visitor.get(FREE + "/why");
		assertThat(location(FREE + "/why/ask?one=" + one + "&other=" + other + "&lang=fi"))
			.isEqualTo(FREE + "/why/" + one + "/" + other + "?lang=fi");
		assertThat(location(FREE + "/why/ask?one=" + one + "&other=" + one)).isEqualTo(FREE + "/why");
		assertThat(location(FREE + "/why/ask?one=//elsewhere.example&other=")).isEqualTo(FREE + "/why");
	}

	private String location(String path) {
		HttpResponse<String> answer = this.visitor.get(path);
		assertThat(answer.statusCode()).isEqualTo(303);
		return answer.headers().firstValue("Location").orElseThrow();
	}

	@Test
	void teamsAreFoundByAnyPartOfTheirName() {
		assertThat(location("/follow/fjord-days/find/ask?name=%C3%81lder!&lang=fr"))
			.isEqualTo("/follow/fjord-days/find/named/alder?lang=fr");
		assertThat(location("/follow/fjord-days/find/ask?name=%20")).isEqualTo("/follow/fjord-days/find");
		assertThat(this.visitor.get("/follow/fjord-days/find/named/alder").body()).contains(">Alder<")
			.doesNotContain(">Juniper<");
		assertThat(this.visitor.get("/follow/fjord-days/find/named/clubj").body()).contains(">Juniper<");
		assertThat(this.visitor.get("/follow/fjord-days/find/named/xyz").body()).contains("is called “xyz”");
		assertThat(this.visitor.get("/follow/fjord-days/find").body().split("class=\"segment-name\"", -1)).hasSize(13);
	}

	@Test
	void teamHasAPageWithAllThatIsPublicOfIt() {
		String last = this.stage.free().lastSkated().orElseThrow();
		assertThat(this.visitor.get("/follow/fjord-days/team/" + last).body()).contains("Short programme",
				"Free skating", "Has skated", "in the event", "Judges in the majority");
		assertThat(this.visitor.get("/follow/fjord-days/team/00000000-0000-0000-0000-000000000000").statusCode())
			.isEqualTo(404);
		assertThat(this.visitor.get("/follow/fjord-days/team/no-team").statusCode()).isBetween(400, 404);
		assertThat(this.visitor.get("/follow/hollow-days/team/" + last).statusCode()).isEqualTo(404);
	}

	@Test
	void firstPageOfACompetitionSaysWhatIsNow() {
		assertThat(this.visitor.get("/follow/fjord-days").body()).contains("On the ice now", "Just in",
				FREE + "#entry-" + this.stage.free().lastSkated().orElseThrow());
		assertThat(this.visitor.get("/").body()).contains("Junior, Free skating: With three teams left");
	}

	@Test
	void everyWordOfTheTradeHasItsMeaningAndItsSource() {
		assertThat(this.visitor.get(FREE).body()).contains("/follow/fjord-days/words#majority");
		for (String language : List.of("en", "fr", "fi")) {
			String page = this.visitor.get("/follow/fjord-days/words?lang=" + language).body();
			assertThat(TradeWords.all()).allSatisfy((word) -> assertThat(page).contains("id=\"" + word + "\""))
				.containsAll(TradeWords.of(this.stage.free().versions.get(8).standing()));
			assertThat(page).doesNotContain("??live");
		}
	}

	@Test
	void picturesHaveTheirFiguresBehindThem() {
		String page = this.visitor.get(FREE + "/pictures").body();
		assertThat(page.split("<svg", -1)).hasSizeGreaterThan(18);
		assertThat(page.split("role=\"img\"", -1)).hasSize(4);
		assertThat(page.split("The figures behind it", -1)).hasSize(4);
		assertThat(page).doesNotContain("style=").contains("Places of 9 teams in 9 steps");
		assertThat(this.visitor.get(api("free-skating") + "/course").body())
			.contains("\"afterTeams\":[1,2,3,4,5,6,7,8,9]");
	}

	@Test
	void correctionStandsOnTop() {
		this.stage.free().correct("Judge 3, second mark of Alder, 5.1 became 5.4.");
		this.visitor.watch(this.stage);
		assertThat(this.visitor.get(FREE).body()).contains("class=\"revised\"",
				"Judge 3, second mark of Alder, 5.1 became 5.4");
	}

	@Test
	void earlierVersionSaysThatItIsOne() {
		assertThat(this.visitor.get(FREE + "/versions/4").body()).contains("Version 4 is superseded by version 9.",
				"After 4 of 12 teams");
		assertThat(this.visitor.get(FREE + "/versions/9").body()).doesNotContain("superseded");
	}

	@Test
	void orderShowsGapsAndHowToRepeatTheDraw() {
		this.stage.free().withdraw();
		this.visitor.watch(this.stage);
		assertThat(this.visitor.get(FREE + "/order").body()).contains("Group 2", "Withdrawn, number stays empty",
				"a-seed-for-all", "sha256sum",
				"printf &#39;%s&#39; &#39;a-seed-for-all|Free skating|Juniper|Club J&#39;");
	}

	@Test
	void emptyListSaysSo() {
		assertThat(this.visitor.get("/").body()).contains("Fjord Days").doesNotContain("Thaw Days");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/follow/hollow-days", "/follow/hollow-days/board", "/follow/hollow-days/signals",
			"/follow/hollow-days/junior", "/follow/hollow-days/junior/free-skating",
			"/follow/hollow-days/junior/free-skating/order", "/follow/hollow-days/junior/free-skating/versions",
			"/follow/hollow-days/junior/free-skating/versions/1", "/follow/fjord-days/senior",
			"/follow/fjord-days/junior/figures", "/follow/fjord-days/junior/free-skating/versions/99",
			"/follow/fjord-days/junior/free-skating/versions/01", "/follow/no-cup" })
	void whatIsNotPublicIsNotThere(String path) {
		assertThat(this.visitor.get(path, "Accept", "text/html").statusCode()).isEqualTo(404);
		assertThat(this.visitor.get(path + "?part=live").statusCode()).isEqualTo(404);
	}

	@ParameterizedTest
	@ValueSource(strings = { "/hollow-days", "/hollow-days/events/junior",
			"/hollow-days/events/junior/segments/free-skating", "/hollow-days/events/junior/segments/free-skating.csv",
			"/hollow-days/events/junior/segments/free-skating/order",
			"/hollow-days/events/junior/segments/free-skating/versions/1", "/fjord-days/events/senior",
			"/fjord-days/events/junior/segments/free-skating/versions/99" })
	void whatIsNotPublicIsAProblemForPrograms(String path) {
		HttpResponse<String> answer = this.visitor.get("/api/public/competitions" + path);
		assertThat(answer.statusCode()).isEqualTo(404);
		assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/problem+json");
	}

	@Test
	void dataIsKeptLikeAPage() {
		HttpResponse<String> first = this.visitor.get(api("free-skating"));
		assertThat(first.headers().firstValue("Content-Type")).hasValue("application/json");
		HttpResponse<String> again = this.visitor.get(api("free-skating"), "If-None-Match",
				first.headers().firstValue("ETag").orElseThrow());
		assertThat(again.statusCode()).isEqualTo(304);
	}

	@Test
	void csvHasALineForEachTeam() {
		HttpResponse<String> csv = this.visitor.get(api("free-skating") + ".csv");
		assertThat(csv.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/csv");
		assertThat(csv.body().lines()).hasSize(10)
			.first()
			.asString()
			.startsWith("place,team,club,start_number,status,J1 first,J1 second,J1,J2 first")
			.endsWith(",why");
		assertThat(csv.body().lines().skip(1).findFirst().orElseThrow()).startsWith("1,Alder,Club A,4,SKATED,");
	}

	private static String api(String segment) {
		return "/api/public/competitions/fjord-days/events/junior/segments/" + segment;
	}

}
