package rimebook.tablets;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Route;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.CompetitionFixtures;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.JudgeCard.expectMarking;
import static rimebook.testsupport.JudgeCard.expectTruth;

/**
 * A tablet without contact whose browser is killed as soon as it has said that a card, or
 * what is typed of one, is kept. How often is the system property
 * {@code rimebook.tablet-kills}, 2 unless told otherwise; 50 for a long look.
 */
@WholeApplication
@BrowserTest
class TabletKilledBrowserTests {

	private static final int KILLS = Integer.getInteger("rimebook.tablet-kills", 2);

	private final ApplicationContext context;

	private final JdbcClient database;

	private SeatView seat;

	@TempDir
	private Path profile;

	private final Browsers tablets;

	TabletKilledBrowserTests(@Autowired ApplicationContext context, Browsers tablets) {
		this.tablets = tablets;
		this.context = context;
		this.database = context.getBean(JdbcClient.class);
	}

	@Test
	void nothingThatWasSaidToBeKeptIsLost() {
		onTheIce(SmallCompetition.running(this.context, 2, 3));
		killAndLook(new TwoMarks());
		assertThat(received("select first_mark from card_submission where seat_id = ? order by sequence"))
			.containsExactlyElementsOf(sent().mapToObj((round) -> 10 * (10 + round % 50)).toList());
	}

	@Test
	void nothingOfACardWithGradesIsLost() {
		PerformanceView skating = onTheIce(
				SmallCompetition.running(this.context, 2, CompetitionFixtures.aPointsEvent("Senior", 3)));
		new CalledElements(this.context, skating).call("I4+pi3", "ME4");
		killAndLook(new Grades());
		assertThat(received("select sequence from points_card where seat_id = ? order by sequence"))
			.hasSameSizeAs(sent().boxed().toList());
	}

	private PerformanceView onTheIce(SmallCompetition day) {
		this.context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
		this.seat = day.seats().get(0);
		day.open(1);
		return day.callNext(1);
	}

	private void killAndLook(Marks marks) {
		BrowserContext joining = this.tablets.ofProfile(this.profile);
		Browsers.joinByHand(joining.newPage(), this.seat.code());
		joining.close();
		for (int round = 1; round <= KILLS; round++) {
			markAndKill(round, marks);
		}
		Page card = this.tablets.ofProfile(this.profile).newPage();
		card.navigate("/judge/card");
		expectMarks(card, KILLS, marks);
		if (!isSent(KILLS)) {
			card.click("#send");
		}
		expectTruth(card, "received");
	}

	/** Every second round the card is sent, in the others it is still being typed. */
	private void markAndKill(int round, Marks marks) {
		BrowserContext browser = this.tablets.ofProfile(this.profile);
		browser.route(Pattern.compile("/api/(points-)?cards/"), Route::abort);
		Page card = browser.newPage();
		card.navigate("/judge/card");
		expectMarking(card);
		if (round > 1) {
			expectMarks(card, round - 1, marks);
		}
		marks.give(card, round);
		if (isSent(round)) {
			card.click("#send");
			expectTruth(card, "kept");
		}
		expectMarks(card, round, marks);
		assertThat(card.locator(".card")).hasAttribute("data-kept", "true");
		kill();
		close(browser);
	}

	private static boolean isSent(int round) {
		return round % 2 == 0;
	}

	private static void expectMarks(Page card, int round, Marks marks) {
		marks.expect(card, round);
		if (isSent(round)) {
			assertThat(card.locator("#truth")).hasAttribute("data-state", Pattern.compile("kept|received"));
		}
	}

	/** The rounds whose marks were sent, the last one at the end if not before. */
	private static IntStream sent() {
		return IntStream.rangeClosed(1, KILLS).filter((round) -> isSent(round) || round == KILLS);
	}

	private List<Integer> received(String query) {
		return this.database.sql(query).param(this.seat.id().value()).query(Integer.class).list();
	}

	/** SIGKILL for the browser of this profile and all its processes. */
	private void kill() {
		for (ProcessHandle process : ProcessHandle.allProcesses().toList()) {
			if (isBrowser(process)) {
				process.descendants().forEach(ProcessHandle::destroyForcibly);
				process.destroyForcibly();
			}
		}
	}

	private boolean isBrowser(ProcessHandle process) {
		try {
			String line = Files.readString(Path.of("/proc", String.valueOf(process.pid()), "cmdline"),
					StandardCharsets.ISO_8859_1);
			return line.contains("--user-data-dir=" + this.profile) && !line.contains("--type=");
		}
		catch (IOException gone) {
			return false;
		}
	}

	private static void close(BrowserContext killed) {
		try {
			killed.close();
		}
		catch (PlaywrightException gone) {
			// As it should be.
		}
	}

	/** What a judge gives in a round, other marks each time. */
	private interface Marks {

		void give(Page card, int round);

		void expect(Page card, int round);

	}

	private static final class TwoMarks implements Marks {

		@Override
		public void give(Page card, int round) {
			for (String mark : List.of("first", "second")) {
				card.click("#" + mark);
				card.keyboard().type(words(round));
			}
		}

		@Override
		public void expect(Page card, int round) {
			assertThat(card.locator("#first .typed")).hasText(words(round));
			assertThat(card.locator("#second .typed")).hasText(words(round));
		}

		private static String words(int round) {
			int tenths = 10 + round % 50;
			return tenths / 10 + "." + tenths % 10;
		}

	}

	private static final class Grades implements Marks {

		@Override
		public void give(Page card, int round) {
			card.click("#elements li:nth-child(1) button");
			card.click("[data-grade='" + grade(round) + "']");
			if (round == 1) {
				card.click("[data-grade='3']");
				for (String component : List.of("Composition", "Presentation", "Skating Skills")) {
					card.click("[data-line='component/" + component + "']");
					card.click("[data-whole='7']");
				}
			}
		}

		@Override
		public void expect(Page card, int round) {
			assertThat(card.locator("#elements li:nth-child(1) .line-given")).hasText("+" + grade(round));
			assertThat(card.locator("#elements li:nth-child(2) .line-given")).hasText("+3");
			assertThat(card.locator("#components .line-given")).hasText(new String[] { "7.00", "7.00", "7.00" });
		}

		private static int grade(int round) {
			return 1 + round % 5;
		}

	}

}
