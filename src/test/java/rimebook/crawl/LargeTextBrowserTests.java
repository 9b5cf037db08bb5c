package rimebook.crawl;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.RequestOptions;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

import rimebook.accounts.Role;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * WCAG 2.2, 1.4.4: whoever has told the browser to write at 200 % loses nothing of the
 * crew's pages, on a phone, a tablet or a desk. Public pages and tablets have tests of
 * their own.
 */
@WholeApplication
@BrowserTest
class LargeTextBrowserTests {

	private static final int TWICE = 32;

	/** What stands beyond the edge of the window, shortened. */
	private static final String BEYOND = """
			() => {
				const range = document.createRange();
				const right = (node) => (range.selectNodeContents(node), range.getBoundingClientRect().right);
				return [...document.querySelectorAll("main *")].filter((each) => right(each) > innerWidth + 1)
					.filter((each) => ![...each.children].some((child) => right(child) > innerWidth + 1))
					.map((each) => each.outerHTML.slice(0, 90)).slice(0, 3).join(" | ");
			}""";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private List<RequestMappingInfoHandlerMapping> mappings;

	private final Browsers screens;

	private final Set<String> seen = new HashSet<>();

	private final List<String> tooWide = new ArrayList<>();

	LargeTextBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void everyPageOfTheCrewFits() {
		List<CrawledPlace> skating = new CrawledPlaces(this.context).in("some cards and every remark");
		List<CrawledPlace> posted = new CrawledPlaces(this.context).in("posted");
		Browsers large = this.screens.writing(TWICE);
		for (Role role : Role.values()) {
			if (role != Role.JUDGE) {
				walk(large, role, addresses(skating, posted.get(0)));
			}
		}
		assertThat(this.tooWide).isEmpty();
		assertThat(this.seen).hasSizeGreaterThan(80);
	}

	private void walk(Browsers large, Role role, Set<String> addresses) {
		Page page = large.signedIn(role);
		addresses.stream().filter((address) -> !this.seen.contains(address)).forEach((address) -> {
			if (opens(page, address)) {
				this.seen.add(address);
				look(page, address);
			}
		});
	}

	/** A part that a page asks for has no style by itself. */
	private static boolean isWhole(Page page) {
		return Boolean.TRUE.equals(page.evaluate("document.styleSheets.length > 0"));
	}

	/** Who is refused need not see it drawn. */
	private boolean opens(Page page, String address) {
		if (page.request().get(address, RequestOptions.create().setMaxRedirects(0)).status() >= 400) {
			return false;
		}
		try {
			Response answer = page.navigate(address);
			return answer != null && answer.ok() && isWhole(page)
					&& page.url().startsWith(this.screens.service() + address);
		}
		catch (PlaywrightException ex) {
			assertThat(ex).as(address).hasMessageContaining("Download is starting");
			return false;
		}
	}

	/**
	 * Pages of a segment for both ways of judging and again when it is posted; others
	 * once.
	 */
	private Set<String> addresses(List<CrawledPlace> skating, CrawledPlace posted) {
		Set<String> addresses = new TreeSet<>();
		CrawledPages.patterns(this.mappings)
			.stream()
			.filter((pattern) -> pattern.matches("/desk.*") && !pattern.matches(".*([.]\\w+|/live)"))
			.forEach((pattern) -> {
				addresses.addAll(posted.addresses(pattern));
				if (pattern.contains("{segment}")) {
					skating.forEach((place) -> addresses.addAll(place.addresses(pattern)));
				}
				CrawledPages.looks(pattern).forEach((look) -> addresses.addAll(skating.get(0).addresses(look)));
			});
		return addresses;
	}

	private void look(Page page, String address) {
		for (int width : List.of(390, 820, 1440)) {
			page.setViewportSize(width, 900);
			int wide = (int) page.evaluate("document.documentElement.scrollWidth");
			if (wide > width) {
				this.tooWide.add(address + " at " + width + ": " + wide + ", by " + page.evaluate(BEYOND));
				Looks.draw(page, "large" + address.replaceAll("[/?=#]", "_") + "-" + width);
			}
		}
	}

}
