package rimebook.marks.web;

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
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.RequiresChromium;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/**
 * A tablet without contact whose browser is killed 200 ms after it has said that a card,
 * or what is typed of one, is kept. How often is the system property
 * {@code rimebook.tablet-kills}, 2 unless told otherwise; 50 for a long look.
 */
@WholeApplication
@RequiresChromium
class TabletKilledBrowserTests {

	private static final int KILLS = Integer.getInteger("rimebook.tablet-kills", 2);

	private static final int AFTERWARDS = 200;

	private final SmallCompetition day;

	private final SeatView seat;

	private final JdbcClient database;

	@TempDir
	private Path profile;

	private Tablets tablets;

	@LocalServerPort
	private int port;

	TabletKilledBrowserTests(@Autowired ApplicationContext context) {
		this.day = SmallCompetition.running(context, 2, 3);
		context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		this.seat = this.day.seats().get(0);
		this.database = context.getBean(JdbcClient.class);
		this.day.open(1);
		this.day.callNext(1);
	}

	@AfterEach
	void putTheTabletAway() {
		this.tablets.close();
	}

	@Test
	void nothingThatWasSaidToBeKeptIsLost() {
		this.tablets = new Tablets(this.port);
		BrowserContext joining = this.tablets.ofProfile(this.profile);
		Tablets.join(joining.newPage(), this.seat.code());
		joining.close();
		for (int round = 1; round <= KILLS; round++) {
			markAndKill(round);
		}
		Page card = this.tablets.ofProfile(this.profile).newPage();
		card.navigate("/judge/card");
		expectMarks(card, KILLS);
		if (!isSent(KILLS)) {
			card.click("#send");
		}
		assertThat(card.locator("#truth")).hasAttribute("data-state", "received");
		assertThat(received()).containsExactlyElementsOf(expected());
	}

	/** Every second round the card is sent, in the others it is still being typed. */
	private void markAndKill(int round) {
		BrowserContext browser = this.tablets.ofProfile(this.profile);
		browser.route("**/api/cards/*", Route::abort);
		Page card = browser.newPage();
		card.navigate("/judge/card");
		assertThat(card.locator(".card")).hasAttribute("data-state", "marking");
		if (round > 1) {
			expectMarks(card, round - 1);
		}
		for (String mark : List.of("first", "second")) {
			card.click("#" + mark);
			card.keyboard().type(words(round));
		}
		if (isSent(round)) {
			card.click("#send");
			assertThat(card.locator("#truth")).hasAttribute("data-state", "kept");
		}
		expectMarks(card, round);
		assertThat(card.locator(".card")).hasAttribute("data-kept", "true");
		card.waitForTimeout(AFTERWARDS);
		kill();
		close(browser);
	}

	private static boolean isSent(int round) {
		return round % 2 == 0;
	}

	private static void expectMarks(Page card, int round) {
		assertThat(card.locator("#first .typed")).hasText(words(round));
		assertThat(card.locator("#second .typed")).hasText(words(round));
		if (isSent(round)) {
			assertThat(card.locator("#truth")).hasAttribute("data-state", Pattern.compile("kept|received"));
		}
	}

	private static String words(int round) {
		int tenths = 10 + round % 50;
		return tenths / 10 + "." + tenths % 10;
	}

	private List<Integer> expected() {
		return IntStream.rangeClosed(1, KILLS)
			.filter((round) -> isSent(round) || round == KILLS)
			.mapToObj((round) -> 10 * (10 + round % 50))
			.toList();
	}

	private List<Integer> received() {
		return this.database.sql("select first_mark from card_submission where seat_id = ? order by sequence")
			.param(this.seat.id().value())
			.query(Integer.class)
			.list();
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

}
