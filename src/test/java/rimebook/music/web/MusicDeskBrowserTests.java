package rimebook.music.web;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ByteArrayResource;

import rimebook.accounts.Role;
import rimebook.entries.EntryView;
import rimebook.music.Music;
import rimebook.music.MusicPlays;
import rimebook.music.Tones;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** The music desk goes on when the network does not. */
@WholeApplication
@BrowserTest
class MusicDeskBrowserTests {

	private final Browsers screens;

	@Autowired
	private ApplicationContext context;

	MusicDeskBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void whatWasLoadedPlaysWithoutNetworkAndIsToldOnce() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.draw(1);
		List<EntryView> teams = day.entries();
		handIn(day, teams.get(0), Tones.wav(3000, 440));
		handIn(day, teams.get(1), Tones.wav(3000, 660));
		Page desk = this.screens.signedIn(Role.ANNOUNCER, "/desk/music/desk/" + day.segment(1));
		assertThat(desk.locator("#loaded")).hasText("2 of 2 loaded. Everything plays without network.");
		Looks.expectFitsAndNoFinding(desk);
		List<String> order = desk.locator("tr[data-version]")
			.all()
			.stream()
			.map((row) -> row.getAttribute("data-team"))
			.toList();
		assertThat(desk.locator("#deck-team")).containsText(order.get(0));

		desk.context().setOffline(true);
		lookNow(desk);
		assertThat(desk.locator("#network")).containsText("What is loaded goes on playing.");
		desk.keyboard().press("Space");
		assertThat(desk.locator("#deck-state")).hasText("playing");
		assertThat(desk.locator("#deck-team")).containsText(order.get(1));
		desk.click("#play");
		assertThat(desk.locator("#untold")).containsText("Not noted yet: 2.");
		assertThat(desk.locator("#deck-state")).hasText("playing");
		Looks.expectNoFinding(desk);
		desk.keyboard().press("Escape");
		assertThat(desk.locator("#deck-state")).hasText("ready");
		assertThat(plays(day)).isZero();

		AtomicInteger told = new AtomicInteger();
		desk.route("**/played", (route) -> {
			if (told.incrementAndGet() == 1) {
				// The service has it, and its answer is lost.
				route.fetch();
				route.abort();
			}
			else {
				route.resume();
			}
		});
		desk.context().setOffline(false);
		desk.waitForCondition(() -> told.get() == 1);
		lookNow(desk);
		assertThat(desk.locator("#untold")).isHidden();
		assertThat(told).as("the first was told twice").hasValue(3);
		assertThat(plays(day)).isEqualTo(2);
		assertThat(desk.locator("#network")).isHidden();
		desk.reload();
		assertThat(desk.locator("#loaded")).containsText("2 of 2 loaded.");
		assertThat(desk.locator(".plays .line")).hasCount(2);
	}

	private void handIn(SmallCompetition day, EntryView team, byte[] file) {
		this.context.getBean(Music.class)
			.handIn(new Music.HandIn(team.id(), day.segment(1), new ByteArrayResource(file), file.length, "a.wav", ""),
					SECRETARY);
	}

	/**
	 * The page looks every ten seconds, and when the system says that there is a network.
	 */
	private static void lookNow(Page desk) {
		desk.evaluate("window.dispatchEvent(new Event('online'))");
	}

	private int plays(SmallCompetition day) {
		return this.context.getBean(MusicPlays.class)
			.ofSegment(day.segment(1))
			.values()
			.stream()
			.mapToInt(List::size)
			.sum();
	}

}
