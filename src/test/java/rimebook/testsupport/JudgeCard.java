package rimebook.testsupport;

import java.util.function.UnaryOperator;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.BoundingBox;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/** What tests do with the card on a judge's tablet, whatever the way of judging. */
public final class JudgeCard {

	/** About as long as names of teams become. */
	public static final String LONG_NAME = "The Northern Lanterns of Lake Everwinter Skating Society";

	private static final int[][] SIZES = { { 768, 1024 }, { 1024, 768 }, { 1280, 800 }, { 820, 900 } };

	private JudgeCard() {
	}

	/** Expect it of the card on tablets of four sizes, upright and across. */
	public static void onEveryTablet(Page card, Runnable expected) {
		for (int[] size : SIZES) {
			card.setViewportSize(size[0], size[1]);
			expected.run();
		}
	}

	/** Expect a card that can be marked. */
	public static void expectMarking(Page card) {
		assertThat(card.locator(".card")).hasAttribute("data-state", "marking");
	}

	/** Expect that the card says that of itself, such as {@code received}. */
	public static void expectTruth(Page card, String truth) {
		assertThat(card.locator("#truth")).hasAttribute("data-state", truth);
	}

	/** Touch those keys, once the card can be marked. */
	public static void touch(Page card, String... keys) {
		expectMarking(card);
		click(card, "key", keys);
	}

	/** Click the keys whose datum of that name has those values, one after the other. */
	public static void click(Page card, String datum, String... values) {
		for (String value : values) {
			card.click("[data-" + datum + "='" + value + "']");
		}
	}

	/**
	 * Send the card and expect that it is received.
	 */
	public static void send(Page card) {
		card.click("#send");
		expectTruth(card, "received");
	}

	/**
	 * Load the card anew once it says that all typed on it is kept; what was typed in the
	 * moment before may be lost, and no screen says otherwise.
	 */
	public static void reload(Page card) {
		assertThat(card.locator(".card")).hasAttribute("data-kept", "true");
		card.reload();
	}

	/** Let the service have a card, but lose its answer if it is the first. */
	public static void loseFirst(Route route, int attempt) {
		if (attempt == 1) {
			assertThat(route.fetch().status()).isEqualTo(200);
			route.abort();
		}
		else {
			route.resume();
		}
	}

	/** Let a tablet be told another table than the service's. */
	public static void tell(Page card, UnaryOperator<String> other) {
		card.route("**/api/judge/table*", (route) -> {
			APIResponse table = route.fetch();
			route.fulfill(new Route.FulfillOptions().setResponse(table).setBody(other.apply(table.text())));
		});
	}

	/** As told of a team with a long name. */
	public static String withALongName(String table) {
		return table.replaceFirst("\"team\":\"[^\"]*\"", "\"team\":\"" + LONG_NAME + "\"");
	}

	/** As told when the cards of No. 12 were opened again. */
	public static String withOneOpenedAgain(String table) {
		return withALongName(table).replaceFirst("\"reopened\":null", """
				"reopened":{"performance":"01a20000-0000-7000-8000-0000000000aa","startNumber":12,
				"team":"Team 12","club":"Club","remarks":[],"points":null}""");
	}

	/**
	 * Expect that nothing of a tablet's card has to be scrolled to, that no key is
	 * covered, and that keys have 14 mm: 84 CSS pixels on a screen of 10 inches.
	 */
	public static void expectAllInSight(Page card, String keys) {
		int width = card.viewportSize().width;
		int height = card.viewportSize().height;
		assertThat(card.evaluate("document.documentElement.scrollHeight")).isEqualTo(height);
		assertThat(card.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
		double send = card.locator("#send").boundingBox().y;
		for (Locator key : card.locator(keys).all()) {
			BoundingBox box = key.boundingBox();
			assertThat(box.height).isGreaterThanOrEqualTo(84);
			assertThat(box.width).isGreaterThanOrEqualTo(84);
			assertThat(box.y + box.height).as("above the button to send").isLessThanOrEqualTo(send);
			assertThat(box.y).as("below the notices").isGreaterThanOrEqualTo(bottom(card, ".head"));
		}
		assertThat(bottom(card, "#truth")).isLessThanOrEqualTo(height);
	}

	private static double bottom(Page card, String part) {
		BoundingBox box = card.locator(part).boundingBox();
		return box.y + box.height;
	}

}
