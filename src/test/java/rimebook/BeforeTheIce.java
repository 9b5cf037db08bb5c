package rimebook;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.jsoup.nodes.Element;

import rimebook.music.Tones;
import rimebook.testsupport.PaperStandards;
import rimebook.testsupport.Visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/**
 * What a secretary does before anybody skates, on the pages alone: fees, rosters from a
 * file, what the event asks, music, letters, and the door on the day.
 */
final class BeforeTheIce {

	/** As many as an international team has on the ice, and one who stands by. */
	private static final int ON_ICE = 16;

	private final Visitor secretary;

	private final String competition;

	private final String event;

	private final String family;

	BeforeTheIce(Visitor secretary, String competition, String event, String family) {
		this.secretary = secretary;
		this.competition = competition;
		this.event = event;
		this.family = family;
	}

	/** The first of the teams is one person short, and what it lacks is found. */
	void prepare(int teams) {
		charge(teams);
		ask();
		writeRosters(teams);
		music();
		write(teams);
	}

	private void charge(int teams) {
		Visitor.Page set = this.secretary.open("/desk/fees/" + this.competition + "/rules")
			.submit("form.sheet",
					Map.of("currency", "EUR", "perTeam", "220", "perSkater", "6,50", "lateSurcharge", "60", "lateAfter",
							"2199-01-31T23:59", "allBackUntil", "2199-02-01T18:00", "shareBack", "50", "shareUntil",
							"2199-02-28T18:00"));
		assertThat(set.text()).contains("%d.00 EUR are open".formatted(220 * teams));
	}

	private void ask() {
		Visitor.Page copied = this.secretary
			.open("/desk/rosters/eligibility/" + this.event + "?set=international-junior");
		assertThat(copied.submit("form.sheet", Map.of("cutOff", "2026-06-30")).status()).isEqualTo(200);
	}

	/**
	 * With semicolons, a mark of the byte order and line ends of Windows, as a
	 * spreadsheet saves it.
	 */
	private void writeRosters(int teams) {
		String rows = IntStream.rangeClosed(1, teams)
			.boxed()
			.flatMap((team) -> IntStream.rangeClosed((team == 1) ? 2 : 1, ON_ICE + 1)
				.mapToObj((number) -> "Junior;Team %d;%s;%s%s;1.3.2011;M%d-%d;%s".formatted(team, given(number),
						this.family, given(team), team, number, (number > ON_ICE) ? "alternate" : "skates")))
			.collect(Collectors.joining("\r\n"));
		String file = "\uFEFFevent;team;given_name;family_name;birth_date;membership_number;part\r\n" + rows;
		Visitor.Page preview = this.secretary.open("/desk/rosters/files/" + this.competition)
			.upload("form[enctype]", Map.of(), "rosters.csv", file.getBytes(StandardCharsets.UTF_8));
		int people = teams * (ON_ICE + 1) - 1;
		assertThat(preview.text()).contains("%1$d of %1$d rows can be taken".formatted(people));
		String writing = preview.press("form[action$=/acceptance]").path();
		await().untilAsserted(() -> assertThat(this.secretary.open(writing).text())
			.contains("All is written: %d people are new".formatted(people)));
		Visitor.Page missing = this.secretary.open("/desk/rosters/" + this.competition);
		assertThat(missing.text()).contains("%d lack something".formatted(teams), "15");
	}

	private static String given(int number) {
		return "Aila" + (char) ('a' + number / 26) + (char) ('a' + number % 26);
	}

	private void music() {
		assertThat(this.secretary.open("/desk/music").document().select("a[href^=/desk/music/desk/]")).isNotEmpty();
		String team = this.secretary.open("/desk/arrival/" + this.competition)
			.document()
			.select("#found tbody th a")
			.attr("href");
		String entry = team.substring(team.lastIndexOf('/') + 1);
		Element form = this.secretary.open("/desk/music/entry/" + entry)
			.document()
			.selectFirst("a[href^=/desk/music/entry/" + entry + "/]");
		Visitor.Page kept = this.secretary.open(form.attr("href"))
			.upload("form[enctype]", Map.of(), "Our music.mp3", Tones.wav(160_000, 440));
		assertThat(kept.text()).contains("2:40", "WAV");
	}

	private void write(int teams) {
		Visitor.Page sending = this.secretary.open("/desk/letters/" + this.competition + "/to/CONFIRMATION")
			.submit("main form", Map.of())
			.submit("main form", Map.of("way", "PAPER"));
		byte[] sheets = this.secretary.bytes(sending.document().selectFirst("a[href$='sheets.pdf']").attr("href"))
			.body();
		assertThat(PaperStandards.faults(sheets)).isEmpty();
		assertThat(sending.document().select("tbody tr")).hasSize(teams);
	}

	/** Everybody comes, and the stand says who is too few. */
	void letIn(int teams) {
		List<String> doors = this.secretary.open("/desk/arrival/" + this.competition)
			.document()
			.select("#found tbody th a")
			.eachAttr("href");
		assertThat(doors).hasSize(teams);
		doors.forEach((door) -> assertThat(this.secretary.open(door).press("form[action$='/all']").text())
			.contains("Everybody on the roster is noted as here."));
	}

	/**
	 * Who was on the ice was kept of every team in both segments, and what they owe is
	 * settled.
	 */
	void look() {
		List<String> doors = this.secretary.open("/desk/arrival/" + this.competition)
			.document()
			.select("#found tbody th a")
			.eachAttr("href");
		assertThat(doors).isNotEmpty()
			.allSatisfy((door) -> assertThat(this.secretary.open(door).document().select("#lineups ~ h3").eachText())
				.hasSize(2)
				.allMatch((line) -> line.endsWith(": 16") || line.endsWith(": 15")));
		assertThat(this.secretary.open("/desk/fees/" + this.competition).text()).contains("EUR are open");
	}

}
