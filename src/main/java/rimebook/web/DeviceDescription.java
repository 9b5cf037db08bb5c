package rimebook.web;

import java.util.Arrays;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;

import rimebook.pages.Device;

/** Puts a request's address and kind of browser into a few words. */
final class DeviceDescription {

	/** The order matters: most browsers also claim to be those further down. */
	private static final String[][] BROWSERS = { { "Edg/", "Edge" }, { "Firefox/", "Firefox" },
			{ "Chrome/", "Chromium" }, { "Safari/", "Safari" } };

	private DeviceDescription() {
	}

	static Device of(HttpServletRequest request) {
		return new Device(request.getRemoteAddr() + ", " + browser(request.getHeader("User-Agent")));
	}

	private static String browser(@Nullable String agent) {
		if (agent == null || agent.isBlank()) {
			return "unnamed program";
		}
		return Arrays.stream(BROWSERS)
			.filter((browser) -> agent.contains(browser[0]))
			.map((browser) -> browser[1])
			.findFirst()
			.orElseGet(() -> firstWord(agent));
	}

	private static String firstWord(String agent) {
		String word = agent.strip().split("[\\s/]", 2)[0].replaceAll("[^A-Za-z0-9._-]", "");
		return word.substring(0, Math.min(word.length(), 40));
	}

}
