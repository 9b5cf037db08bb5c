package rimebook.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class MovingPartTests {

	@Test
	void sameContentsHaveTheSameTagInAPageAndAlone() {
		String part = part(List.of(row("a", 1)));
		String page = "<html><body><main>" + part + "</main></body></html>";
		assertThat(moving(page).tag()).isEqualTo(moving(part).tag());
		assertThat(moving(page).html()).isEqualTo(moving(part).html());
		assertThat(moving(moving(page).tagged(page)).tag()).isEqualTo(moving(part).tag());
		assertThat(moving(part).tagged(part)).startsWith("<div id=\"live\" data-tag=\"" + moving(part).tag() + "\"");
		assertThat(moving(part(List.of(row("a", 2)))).tag()).isNotEqualTo(moving(part).tag()).hasSize(12);
	}

	@Test
	void pageThatDoesNotMoveHasNone() {
		assertThat(MovingPart.in("<html><p>A list</p></html>")).isEmpty();
		assertThat(Rendition.ofPage("<html><p>A list</p></html>").bytes(false)).asString()
			.isEqualTo("<html><p>A list</p></html>");
	}

	@Test
	void ofEqualRowsTheIdentityIsSentAlone() {
		MovingPart before = moving(part(List.of(row("a", 1), row("b", 2))));
		MovingPart now = moving(part(List.of(row("b", 2), row("a", 3))));
		assertThat(now.since(before.print()))
			.contains("<tbody id=\"row-b\" data-kept=\"\"></tbody>", "<span>3</span>",
					"<tr data-kept=\"2\"><td>3</td></tr>", "data-since=\"" + before.tag() + "\"")
			.doesNotContain("5.6");
	}

	@Test
	void nothingIsLeftOutOfALineThatBeginsOtherwise() {
		MovingPart before = moving(part(List.of(row("a", 1))));
		MovingPart now = moving(part(List.of(row("a", 1).replace("Judge", "Seat"))));
		assertThat(now.since(before.print())).contains("<tr><th>Seat</th><td>5.6</td><td>1</td></tr>");
	}

	@Test
	void linesInALeftOutCellWouldNotBeCounted() {
		String nested = "<div id=\"live\"><details id=\"d\"><table><tbody><tr><td><table><tbody><tr><td>1</td></tr>"
				+ "</tbody></table></td><td>%s</td></tr></tbody></table></details></div>";
		assertThat(moving(nested.formatted("b")).since(moving(nested.formatted("a")).print()))
			.contains("<tr><td><table>", "<tr data-kept=\"1\"></tr>");
	}

	@Test
	void inSomethingThatIsLeftOutNothingElseIs() {
		String nested = "<div id=\"live\"><p>%s</p><table><tbody id=\"a\"><tr><td><details id=\"b\"><table><tr><td>1</td>"
				+ "</tr></table></details></td></tr></tbody></table></div>";
		String difference = moving(nested.formatted("2")).since(moving(nested.formatted("1")).print());
		assertThat(difference).contains("<table><tbody id=\"a\" data-kept=\"\"></tbody></table>", "<p>2</p>");
		assertThat(parsed(difference).select("[data-kept]")).hasSize(1);
	}

	@Test
	void signsThatLookLikeMarkupAreNone() {
		String page = "<body><div id=\"live\" data-seen=\"{&quot;a&quot;:1}\"><!-- <p> --><img alt=\"a > b\"><br>"
				+ "<svg viewBox=\"0 0 1 1\"><path d=\"M0 0\"/></svg><script>if (1 < 2) { '<b>'; '</i>' }</script>"
				+ "<details id=\"d\"><summary>a</summary></details></div><p>no end";
		MovingPart part = moving(page);
		assertThat(part.text()).startsWith("<div id").endsWith("</details></div>");
		assertThat(part.pieces()).singleElement().satisfies((piece) -> {
			assertThat(part.text().substring(piece.from(), piece.to())).startsWith("<details").endsWith("</details>");
		});
	}

	@ParameterizedTest
	@ValueSource(strings = { "<div id=\"live\"><p></div>", "<div id=\"live\"></p></div>", "<div id=\"live\">",
			"<div id=\"live\"><p", "<div id=\"live\"><!-- </div>", "<div id=\"live\"><b></bb></b></div>" })
	void ofWhatIsNotClosedAllIsSent(String page) {
		assertThat(MovingPart.in(page)).isEmpty();
		assertThat(Rendition.ofPage(page).bytes(false)).asString().isEqualTo(page);
	}

	/** Rows come, go, change and change places; what was left out can be filled in. */
	@RepeatedTest(200)
	void whoeverHasTheEarlierOneHasTheNewOne(RepetitionInfo repetition) {
		Random random = new Random(20261130 + repetition.getCurrentRepetition());
		MovingPart before = moving(part(rows(random)));
		MovingPart now = moving(part(rows(random)));
		Document filled = parsed(now.since(before.print()));
		fill(filled, parsed(before.html()));
		filled.getElementById("live").removeAttr("data-since");
		assertThat(filled.getElementById("live").outerHtml()).isEqualTo(now.html());
	}

	/** What the script of the page does, said once more. */
	private static void fill(Document now, Document shown) {
		List<Runnable> moves = new ArrayList<>();
		for (Element gap : now.select("[data-kept]")) {
			if (gap.attr("data-kept").isEmpty()) {
				moves.add(() -> gap.replaceWith(shown.getElementById(gap.id())));
				continue;
			}
			Element place = gap.closest("details");
			Element line = shown.getElementById(place.id()).select("tr").get(place.select("tr").indexOf(gap));
			int cells = Integer.parseInt(gap.attr("data-kept"));
			moves.add(() -> {
				gap.prependChildren(List.copyOf(line.children().subList(0, cells)));
				gap.removeAttr("data-kept");
			});
		}
		moves.forEach(Runnable::run);
	}

	private static List<String> rows(Random random) {
		List<Integer> teams = IntStream.range(0, 6).boxed().collect(Collectors.toCollection(ArrayList::new));
		Collections.shuffle(teams, random);
		return teams.stream()
			.limit(2 + random.nextInt(5))
			.map((team) -> row(String.valueOf((char) ('a' + team)), random.nextInt(3)))
			.toList();
	}

	private static String row(String team, int place) {
		return """
				<tbody id="row-%1$s"><tr><td><span>%2$d</span> &amp; “%1$s”</td></tr><tr><td>
				<details id="more-%1$s"><summary>Why</summary><table><tbody>
				<tr><th>Judge</th><td>5.6</td><td>%2$d</td></tr>
				<tr><th>2</th><td>%3$s</td><td>%2$d</td></tr>
				</tbody></table></details></td></tr></tbody>
				""".formatted(team, place, (place == 2) ? "4.9" : "5.5");
	}

	private static String part(List<String> rows) {
		return "<div id=\"live\" data-seen=\"{}\"><p>After " + rows.size() + "</p>\n<table>" + String.join("", rows)
				+ "</table></div>";
	}

	private static MovingPart moving(String page) {
		return MovingPart.in(page).orElseThrow();
	}

	private static Document parsed(String html) {
		Document document = Jsoup.parse(html);
		document.outputSettings().prettyPrint(false);
		return document;
	}

}
