package rimebook;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/**
 * Twelve teams with their people come in two files, as a spreadsheet saves them, and at
 * the door eight of them are found by three letters and counted in.
 */
@WholeApplication
@BrowserTest
class BeforeTheIceBrowserTests {

	private static final int PEOPLE = 20;

	private static final Pattern NOBODY = Pattern.compile("^\\s*0 of 20");

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	BeforeTheIceBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void twelveTeamsComeFromFilesAndEightAreAtTheDoor() {
		SmallCompetition day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 0,
				CompetitionFixtures.anEvent("Junior", 5));
		String competition = day.competition().id().toString();
		try (Page page = this.screens.signedIn(Role.SECRETARY, "/desk/entries/import/" + competition)) {
			hand(page, "teams.csv", "sep=;\r\nTeam;Club;Event;Town;Spoken_as\r\n"
					+ lines((team) -> name(team) + ";\"Club " + name(team) + ", old\";Junior;Tarnholt;\r\n"));
			page.locator("button.main", new Page.LocatorOptions().setHasText("12 teams")).click();
			page.navigate("/desk/rosters/files/" + competition);
			hand(page, "people.csv",
					"\uFEFFevent;team;family_name;given_name;birth_date;membership_number;part\r\n" + rosters());
			page.locator("button.main", new Page.LocatorOptions().setHasText("Write 240 rows")).click();
			assertThat(page.locator("[role=status]")).containsText("240");
			page.navigate("/desk/rosters/" + competition);
			assertThat(page.locator("table.rows tbody tr")).hasCount(12);
			Looks.expectFitsAndNoFinding(page);
			page.setViewportSize(820, 1180);
			IntStream.range(0, 8).forEach((team) -> countIn(page, competition, team));
			page.navigate("/desk/arrival/" + competition);
			assertThat(page.locator("td.keep").filter(new Locator.FilterOptions().setHasText("20 of 20"))).hasCount(8);
			assertThat(page.locator("td.keep").filter(new Locator.FilterOptions().setHasText(NOBODY))).hasCount(4);
			Looks.expectFitsAndNoFinding(page);
		}
		assertThat(day.entries()).hasSize(12);
	}

	private static void hand(Page page, String name, String text) {
		page.setInputFiles("#file", new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8)));
		page.locator("form.sheet button.main").click();
		assertThat(page.locator("#bad")).hasCount(0);
	}

	private static void countIn(Page page, String competition, int team) {
		page.navigate("/desk/arrival/" + competition);
		page.locator("#q").pressSequentially(name(team).substring(0, 3).toLowerCase(Locale.ROOT));
		Locator found = page.locator("#found tbody tr");
		assertThat(found).hasCount(1);
		found.locator("a").click();
		assertThat(page.locator("#people")).hasText(NOBODY);
		page.locator("button.main").click();
		assertThat(page.locator("#people")).containsText("20 of 20");
	}

	/** Each begins with three letters of its own. */
	private static String name(int team) {
		return "ABCDEFGHIJKL".charAt(team) + "lmfrost " + (team + 1);
	}

	private static String rosters() {
		return lines((team) -> IntStream.range(0, PEOPLE)
			.mapToObj((person) -> "Junior;%s;Hoarfrost %d;Aila %s;%s;N-%d-%d;%s\r\n".formatted(name(team), person,
					"ABCDEFGHIJKL".charAt(team), LocalDate.of(2011, 1, 1).plusDays(31L * person + team), team, person,
					(person < 16) ? "skates" : "alternate"))
			.collect(Collectors.joining()));
	}

	private static String lines(IntFunction<String> line) {
		return IntStream.range(0, 12).mapToObj(line).collect(Collectors.joining());
	}

}
