package rimebook.testsupport;

import java.nio.file.Files;
import java.nio.file.Path;

/** The browser of this machine that tests may drive. */
public final class Chromium {

	private Chromium() {
	}

	/**
	 * Where the browser is expected: {@code /usr/bin/chromium}, or what the system
	 * property {@code rimebook.chromium} says. Nothing promises that it is there; tests
	 * ask for that with {@link RequiresChromium}.
	 * @return the path of the executable
	 */
	public static Path executable() {
		return Path.of(System.getProperty("rimebook.chromium", "/usr/bin/chromium"));
	}

	static boolean isInstalled() {
		return Files.isExecutable(executable());
	}

}
