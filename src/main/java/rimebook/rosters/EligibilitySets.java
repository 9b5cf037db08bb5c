package rimebook.rosters;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

import org.springframework.stereotype.Component;

/** The ready sets that come with the service, read once at its start. */
@Component
public class EligibilitySets {

	private static final List<String> SHIPPED = List.of("international-senior", "international-junior",
			"international-novice", "national-novice", "adult", "mixed-age");

	private final List<EligibilitySet> all = SHIPPED.stream().map(EligibilitySets::read).toList();

	EligibilitySets() {
	}

	/** Every set, in the order in which they are offered. */
	public List<EligibilitySet> all() {
		return this.all;
	}

	/** The set of that word; empty if there is none. */
	public Optional<EligibilitySet> set(String id) {
		return this.all.stream().filter((set) -> set.id().equals(id)).findFirst();
	}

	private static EligibilitySet read(String id) {
		String file = "/eligibility/" + id + ".properties";
		try (InputStream in = EligibilitySets.class.getResourceAsStream(file)) {
			if (in == null) {
				throw new IllegalStateException("There is no file " + file);
			}
			Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
			Properties written = new Properties();
			written.load(reader);
			return new EligibilitySet(id, written);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
