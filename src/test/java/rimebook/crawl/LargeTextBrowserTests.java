package rimebook.crawl;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

import rimebook.accounts.Role;
import rimebook.testsupport.Chromium;
import rimebook.testsupport.Crew;
import rimebook.testsupport.RequiresChromium;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * WCAG 2.2, 1.4.4: whoever has told the browser to write at 200 % loses nothing of the
 * crew's pages, on a phone, a tablet or a desk. Public pages and tablets have tests of
 * their own.
 */
@WholeApplication
@RequiresChromium
class LargeTextBrowserTests {

	private static final int TWICE = 32;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private List<RequestMappingInfoHandlerMapping> mappings;

	@LocalServerPort
	private int port;

	private final Set<String> seen = new HashSet<>();

	private final List<String> tooWide = new ArrayList<>();

	@Test
	void everyPageOfTheCrewFits() {
		List<CrawledPlace> places = Stream.of("some cards and every remark", "interrupted", "posted")
			.flatMap((state) -> new CrawledPlaces(this.context).in(state).stream())
			.toList();
		try (Browser large = Chromium.writing(TWICE)) {
			for (Role role : Role.values()) {
				if (role != Role.JUDGE) {
					walk(large, role, places);
				}
			}
		}
		assertThat(this.tooWide).isEmpty();
		assertThat(this.seen).hasSizeGreaterThan(80);
	}

	private void walk(Browser large, Role role, List<CrawledPlace> places) {
		try (BrowserContext laptop = large.newContext()) {
			Page page = laptop.newPage();
			page.navigate(at("/sign-in"));
			page.fill("[name=signInName]", Crew.add(this.context, role));
			page.fill("[name=password]", Crew.PASSWORD);
			page.click("form[action='/sign-in'] button[type=submit]");
			page.waitForURL("**/desk");
			addresses(places).stream().filter((address) -> !this.seen.contains(address)).forEach((address) -> {
				Response answer = page.navigate(at(address));
				if (answer != null && answer.ok() && page.url().startsWith(at(address))) {
					this.seen.add(address);
					look(page, address);
				}
			});
		}
	}

	private Set<String> addresses(List<CrawledPlace> places) {
		Set<String> addresses = new TreeSet<>();
		CrawledPages.patterns(this.mappings)
			.stream()
			.filter((pattern) -> pattern.matches("/desk.*") && !pattern.matches(".*([.]\\w+|/live)"))
			.flatMap((pattern) -> CrawledPages.looks(pattern).stream())
			.forEach((look) -> places.forEach((place) -> addresses.addAll(place.addresses(look))));
		return addresses;
	}

	private void look(Page page, String address) {
		for (int width : List.of(390, 820, 1440)) {
			page.setViewportSize(width, 900);
			int wide = (int) page.evaluate("document.documentElement.scrollWidth");
			if (wide > width) {
				this.tooWide.add(address + " at " + width + ": " + wide + ", by " + page.evaluate(WIDEST));
				page.screenshot(new Page.ScreenshotOptions()
					.setPath(Path.of("target/screens",
							"large" + address.replaceAll("[/?=#]", "_") + "-" + width + ".png"))
					.setFullPage(true));
			}
		}
	}

	private static final String WIDEST = """
			[...document.querySelectorAll("body *")]
				.filter((e) => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest(".unseen, .wide, [hidden]"))
				.map((e) => e.outerHTML.slice(0, 120)).slice(0, 3).join(" | ")""";

	private String at(String path) {
		return "http://localhost:" + this.port + path;
	}

}
