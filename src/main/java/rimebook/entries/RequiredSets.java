package rimebook.entries;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The ready lists of required elements that come with the service, read once at its
 * start. They are no rulebook: each says where it was read, and all of it can be changed
 * once it is copied.
 */
@Component
public class RequiredSets {

	private static final List<String> SHIPPED = List.of("short-five-kinds", "free-ten-elements", "short-two-marks");

	private final List<RequiredSet> all = SHIPPED.stream().map(RequiredSets::read).toList();

	RequiredSets() {
	}

	/**
	 * Those that may fit an event, in the order in which they are offered.
	 * @param byPoints whether it has a table of values
	 */
	public List<RequiredSet> fitting(boolean byPoints) {
		return this.all.stream().filter((set) -> set.byPoints() == byPoints).toList();
	}

	/** The set of that word; empty if there is none. */
	public Optional<RequiredSet> set(String id) {
		return this.all.stream().filter((set) -> set.id().equals(id)).findFirst();
	}

	private static RequiredSet read(String id) {
		String file = "/required/" + id + ".properties";
		try (InputStream in = Objects.requireNonNull(RequiredSets.class.getResourceAsStream(file), file)) {
			Properties written = new Properties();
			written.load(new InputStreamReader(in, StandardCharsets.UTF_8));
			return new RequiredSet(id, text(written, "title"), text(written, "judging").equals("points"),
					text(written, "lines").replace("; ", "\n"), number(written, "least"), number(written, "most"),
					text(written, "source"));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static String text(Properties written, String name) {
		return written.getProperty(name, "");
	}

	private static @Nullable Integer number(Properties written, String name) {
		return written.containsKey(name) ? Integer.valueOf(text(written, name)) : null;
	}

	/**
	 * A ready list to copy from.
	 *
	 * @param id the word by which it is chosen
	 * @param title what people call it
	 * @param byPoints whether its signs are those of a table of values
	 * @param lines as they are typed
	 * @param source where it was read, or "from memory"
	 */
	public record RequiredSet(String id, String title, boolean byPoints, String lines, @Nullable Integer least,
			@Nullable Integer most, String source) {
	}

}
