package rimebook.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import javax.sql.DataSource;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.accounts.Role;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

/** The page from which archives are made, and the page inside one. */
@WholeApplication
@BrowserTest
class ArchiveBrowserTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private DataSource database;

	@TempDir
	private Path directory;

	/** Nothing is fetched but what lies in the folder. */
	@Test
	void thePageInsideOpensFromTheFolder(Browsers screens) throws Exception {
		for (SmallCompetition competition : List.of(Archives.placement(this.context, 5, 9),
				Archives.points(this.context))) {
			String name = competition.competition().slug();
			Path file = this.directory.resolve(name + ".zip");
			try (Connection connection = this.database.getConnection()) {
				Archives.write(connection, competition, Variant.PUBLIC, file);
			}
			Path folder = Archives.unpacked(file, this.directory.resolve(name));
			Page page = screens.screen(1440, 900);
			List<String> asked = new ArrayList<>();
			page.onRequest((request) -> asked.add(request.url()));
			page.navigate(folder.resolve("index.html").toUri().toString());
			Assertions.assertThat(page.locator("h2").count()).isGreaterThan(1);
			Looks.expectFitsAndNoFinding(page);
			for (int width : new int[] { 390, 820, 1440 }) {
				page.setViewportSize(width, 900);
				Looks.draw(page,
						"archive-inside-" + (page.locator("h3").count() > 0 ? "points-" : "placement-") + width);
			}
			Assertions.assertThat(asked).hasSize(1);
			for (Locator link : page.locator("a[href^=data]").all()) {
				Assertions.assertThat(folder.resolve(link.getAttribute("href"))).exists();
			}
		}
	}

	/** Drawn anew each second, the button keeps the focus. */
	@Test
	void isStoppedByTheKeyboard(Browsers screens) {
		SmallCompetition competition = SmallCompetition.running(this.context, 2, 3);
		Page page = screens.signedIn(Role.SECRETARY, "/desk/archive/" + competition.competition().id());
		this.context.getBean(TransactionTemplate.class).executeWithoutResult((status) -> {
			this.context.getBean(JdbcClient.class).sql("select id from record_head for update").query().listOfRows();
			page.locator("section[aria-labelledby=whole] button").click();
			Locator stop = page.locator("#archives form button");
			stop.focus();
			page.waitForResponse(Pattern.compile(".*/progress"), () -> {
			});
			for (int width : new int[] { 390, 820, 1440 }) {
				page.setViewportSize(width, 900);
				Looks.draw(page, "archive-page-making-" + width);
			}
			assertThat(stop).isFocused();
			page.keyboard().press("Enter");
			assertThat(page.locator("#archives td.grow")).containsText("stopped; there is no file");
		});
		Looks.expectFitsAndNoFinding(page);
	}

	@Test
	void thePageTellsHowFarItIsAndGivesTheFile(Browsers screens) throws Exception {
		SmallCompetition competition = Archives.placement(this.context, 3, 3);
		Page page = screens.signedIn(Role.SECRETARY, "/desk/archive/" + competition.competition().id());
		Looks.expectFitsAndNoFinding(page);
		page.locator("section[aria-labelledby=whole] button").click();
		assertThat(page.locator("#archives form.save button")).containsText("Save the file");
		Looks.expectFitsAndNoFinding(page);
		for (int width : new int[] { 390, 820, 1440 }) {
			page.setViewportSize(width, 900);
			Looks.draw(page, "archive-page-" + width);
		}
		Download download = page.waitForDownload(() -> page.locator("#archives form.save button").click());
		Path saved = this.directory.resolve("saved.zip");
		download.saveAs(saved);
		Assertions.assertThat(Files.size(saved)).isPositive();
		Assertions.assertThat(ArchiveCheck.checkFiles(saved).faults()).isEmpty();
	}

}
