package rimebook.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;
import org.springframework.web.util.HtmlUtils;

import rimebook.published.Standing;
import rimebook.tabulation.Hundredths;

/**
 * A page that shows every result from the folder alone: no script, no address, nothing
 * that a browser would have to fetch.
 */
final class ResultsPage {

	private static final String STYLE = """
			body{font:1rem/1.5 sans-serif;margin:1rem auto;max-width:70rem;padding:0 1rem;color:#111;background:#fff}
			table{border-collapse:collapse;margin:0 0 1rem}td,th{padding:.2rem .6rem;border-bottom:1px solid #bbb;
			text-align:left;vertical-align:top}
			.n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
			.wide{overflow-x:auto}.wide td:last-child:not(.n){min-width:15rem}code{overflow-wrap:anywhere}
			""";

	private final StringBuilder html = new StringBuilder();

	private ResultsPage() {
	}

	static String of(Standings standings, List<Standings.Shown> newest) {
		ResultsPage page = new ResultsPage();
		page.head(standings, newest);
		newest.forEach(page::standing);
		page.html.append("</main>\n</body>\n</html>\n");
		return page.html.toString();
	}

	private void head(Standings standings, List<Standings.Shown> newest) {
		String name = Standings.text(standings.competition(), "name");
		this.html.append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
			.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
			.append(text(name))
			.append("</title>\n<style>")
			.append(STYLE)
			.append("</style>\n</head>\n<body>\n<main>\n<h1>")
			.append(text(name))
			.append("</h1>\n<p>")
			.append(text(Standings.text(standings.competition(), "place") + ", "
					+ Standings.text(standings.competition(), "first_day") + " to "
					+ Standings.text(standings.competition(), "last_day") + ". "
					+ Standings.text(standings.competition(), "rulebook")))
			.append("</p>\n<ul>\n");
		newest.forEach((shown) -> this.html.append("<li><a href=\"#")
			.append(text(shown.anchor()))
			.append("\">")
			.append(text(title(shown)))
			.append("</a></li>\n"));
		this.html.append("</ul>\n");
		if (newest.isEmpty()) {
			this.html.append("<p>No result was published.</p>\n");
		}
	}

	private static String title(Standings.Shown shown) {
		Standing standing = shown.standing();
		return standing.segment().isEmpty() ? standing.event() + ": whole event"
				: standing.event() + ": " + standing.segment();
	}

	private void standing(Standings.Shown shown) {
		Standing standing = shown.standing();
		this.html.append("<h2 id=\"")
			.append(text(shown.anchor()))
			.append("\">")
			.append(text(title(shown)))
			.append("</h2>\n<p>Version ")
			.append(shown.version().number())
			.append(", ")
			.append(text(shown.version().state().toLowerCase(Locale.ROOT)))
			.append(", ")
			.append(standing.skated())
			.append(" of ")
			.append(standing.starters())
			.append(" skated. ")
			.append(text(standing.ruleSet().english()))
			.append("<br>Fingerprint <code>")
			.append(text(Standings.text(shown.version().row(), "fingerprint")))
			.append("</code>, <a href=\"")
			.append(shown.version().file())
			.append("\">its data</a></p>\n");
		standing.panelNotes().forEach((note) -> this.html.append("<p>").append(text(note.english())).append("</p>\n"));
		wide(title(shown));
		this.html.append("<thead><tr>");
		List<String> heads = heads(standing);
		heads.forEach((head) -> this.html.append("<th scope=\"col\">").append(text(head)).append("</th>"));
		this.html.append("</tr></thead>\n<tbody>\n");
		standing.rows().forEach((row) -> row(standing, row));
		this.html.append("</tbody>\n</table>\n</div>\n");
		standing.rows().forEach(this::score);
	}

	/**
	 * A table that is moved sideways where it is wider than the window, by the keyboard
	 * too.
	 */
	private void wide(String label) {
		this.html.append("<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"")
			.append(text(label))
			.append("\">\n<table>\n");
	}

	private static List<String> heads(Standing standing) {
		List<String> heads = new ArrayList<>(List.of("Place", "Team", "Club"));
		if (hasCards(standing)) {
			standing.judgeNumbers().forEach((judge) -> heads.add("Judge " + judge));
		}
		standing.segments()
			.forEach((segment) -> heads.add(segment.name() + " × " + Hundredths.plain(segment.factor())));
		if (hasTotal(standing)) {
			heads.add(standing.isByPoints() ? "Points" : "Total");
		}
		heads.add("Why");
		return heads;
	}

	private static boolean hasCards(Standing standing) {
		return standing.rows().stream().anyMatch((row) -> !row.cards().isEmpty());
	}

	private static boolean hasTotal(Standing standing) {
		return standing.rows().stream().anyMatch((row) -> row.total() != null);
	}

	private void row(Standing standing, Standing.Row row) {
		Integer place = row.place();
		this.html.append("<tr>");
		number((place != null) ? place.toString() : row.status().toLowerCase(Locale.ROOT).replace('_', ' '));
		cell(row.team());
		cell(row.club());
		if (hasCards(standing)) {
			for (int i = 0; i < standing.judgeNumbers().size(); i++) {
				number((i < row.cards().size()) ? card(row.cards().get(i)) : "");
			}
		}
		for (int i = 0; i < standing.segments().size(); i++) {
			number(segment(row, i));
		}
		if (hasTotal(standing)) {
			number(plain(row.total()));
		}
		cell(row.why().english());
		this.html.append("</tr>\n");
	}

	private static String card(Standing.Card card) {
		String ordinal = card.ordinal().isEmpty() ? "" : " → " + card.ordinal();
		return Hundredths.decimal(card.first()) + " + " + Hundredths.decimal(card.second()) + ordinal;
	}

	private static String segment(Standing.Row row, int segment) {
		Integer place = (segment < row.segmentPlaces().size()) ? row.segmentPlaces().get(segment) : null;
		List<@Nullable Integer> totals = row.segmentTotals();
		String points = (totals != null) ? " (" + plain(totals.get(segment)) + ")" : "";
		return (place != null) ? place + points : "";
	}

	private static String plain(@Nullable Integer hundredths) {
		return (hundredths != null) ? Hundredths.plain(hundredths) : "";
	}

	private void score(Standing.Row row) {
		Standing.Score score = row.score();
		if (score == null) {
			return;
		}
		this.html.append("<h3>").append(text(row.team() + ": " + plain(score.total()))).append("</h3>\n");
		wide(row.team());
		this.html.append("<tbody>\n");
		score.elementLines()
			.forEach((line) -> line(line.number() + " " + line.code(), line.name(), grades(line.grades()),
					plain(line.score())));
		score.componentLines()
			.forEach((line) -> line(line.name(), "× " + plain(line.factor()), marks(line.marks()),
					plain(line.points())));
		score.deductionLines()
			.forEach((line) -> line(line.item(), line.name(), String.valueOf(line.count()), plain(-line.points())));
		this.html.append("</tbody>\n</table>\n</div>\n");
	}

	private void line(String item, String name, String marks, String points) {
		this.html.append("<tr>");
		cell(item);
		cell(name);
		number(marks);
		number(points);
		this.html.append("</tr>\n");
	}

	private static String grades(List<Standing.Score.Mark> marks) {
		return String.join(" ",
				marks.stream().map((mark) -> (mark.given() != null) ? mark.given() + "" : "-").toList());
	}

	private static String marks(List<Standing.Score.Mark> marks) {
		return String.join(" ",
				marks.stream().map((mark) -> (mark.given() != null) ? plain(mark.given()) : "-").toList());
	}

	private void cell(String text) {
		this.html.append("<td>").append(text(text)).append("</td>");
	}

	private void number(String text) {
		this.html.append("<td class=\"n\">").append(text(text)).append("</td>");
	}

	private static String text(String text) {
		return HtmlUtils.htmlEscape(text, "UTF-8");
	}

}
