package rimebook.live;

import java.nio.file.Path;
import java.util.List;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import rimebook.competition.Competitions;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.results.Standings;
import rimebook.testsupport.Chromium;
import rimebook.testsupport.RequiresChromium;

@LiveTest
@RequiresChromium
class LivePagesBrowserTests {

	@LocalServerPort
	private int port;

	private final Stage stage = new Stage();

	@Test
	void shots(@Autowired Competitions competitions, @Autowired Entries entries, @Autowired StartingOrderDraw draw,
			@Autowired Standings standings) {
		for (int i = 0; i < 7; i++) {
			this.stage.free().skate();
		}
		this.stage.free().withdraw();
		this.stage.free().skate();
		this.stage.free().call();
		this.stage.play(competitions, entries, draw, standings);
		try (Playwright playwright = Playwright.create();
				Browser browser = playwright.chromium()
					.launch(new BrowserType.LaunchOptions().setExecutablePath(Chromium.executable()))) {
			List<String> paths = List.of("/", "/follow/winter-cup", "/follow/winter-cup/junior",
					"/follow/winter-cup/junior/free-skating", "/follow/winter-cup/junior/free-skating/order",
					"/follow/winter-cup/junior/free-skating/versions",
					"/follow/winter-cup/junior/free-skating/versions/4", "/follow/winter-cup/board");
			for (int width : List.of(320, 390, 820, 1440)) {
				Page page = browser.newPage(new Browser.NewPageOptions().setViewportSize(width, 900));
				page.onConsoleMessage((message) -> System.out.println("CONSOLE " + message.text()));
				for (String path : paths) {
					page.navigate("http://localhost:" + this.port + path);
					shoot(page, path, width, "");
					Object wide = page.evaluate("document.documentElement.scrollWidth");
					System.out.println(path + " " + width + " -> " + wide);
					if (path.endsWith("junior/free-skating") || path.endsWith("junior")) {
						page.evaluate("(document.querySelectorAll('.standing details')[1] || {}).open = true");
						shoot(page, path, width, "-open");
					}
				}
				page.navigate("http://localhost:" + this.port + "/follow/winter-cup/junior/free-skating?lang=fi");
				shoot(page, "/fi", width, "");
				page.navigate("http://localhost:" + this.port + "/follow/winter-cup/junior/free-skating?lang=fr");
				shoot(page, "/fr", width, "");
				if (width == 1440) {
					page.setViewportSize(1920, 1080);
					page.navigate("http://localhost:" + this.port + "/follow/winter-cup/board");
					shoot(page, "/board", 1920, "");
				}
				page.close();
			}
			Page page = browser.newPage(new Browser.NewPageOptions().setViewportSize(680, 900));
			page.emulateMedia(new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
			page.navigate("http://localhost:" + this.port + "/follow/winter-cup/junior/free-skating");
			shoot(page, "/print", 680, "");
			page.pdf(new Page.PdfOptions().setFormat("A4").setPath(Path.of("target/screens/print.pdf")));
		}
	}

	private static void shoot(Page page, String path, int width, String suffix) {
		String name = path.replace('/', '_') + "-" + width + suffix + ".png";
		page.screenshot(new Page.ScreenshotOptions().setPath(Path.of("target/screens/" + name))
			.setFullPage(!path.endsWith("board")));
	}

}
