package rimebook.rehearsal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

import org.springframework.boot.context.properties.bind.Bindable;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.context.annotation.Profile;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

import rimebook.pages.HouseAddresses;

/**
 * Starts the process of a rehearsal beside this very service. Where the service has TLS
 * the rehearsal has it, too, with the same certificate: a browser that knows a name by
 * TLS opens no other port of that name without it.
 */
@Component
@Profile("!" + RehearsalMark.PROFILE)
class RehearsalStart {

	private static final String FILE = "file:";

	private final RehearsalSettings settings;

	private final Environment environment;

	private final HouseAddresses house;

	RehearsalStart(RehearsalSettings settings, Environment environment, HouseAddresses house) {
		this.settings = settings;
		this.environment = environment;
		this.house = house;
	}

	/**
	 * Start it on the archive that lies in a folder.
	 * @param password of everybody who signs in there
	 */
	RehearsalProcess start(RehearsalFolder folder, UUID competition, String password) throws IOException {
		int port = this.settings.freePort(this.environment.getRequiredProperty("local.server.port", Integer.class));
		return RehearsalProcess.start(folder, competition,
				new RehearsalProcess.Order(port, this.settings.heap(), password, given(port)));
	}

	/**
	 * The settings that it has from this service: those of TLS, and under which name it
	 * is reached if this one has a name.
	 */
	Map<String, String> given(int port) {
		Map<String, String> given = new TreeMap<>();
		for (String group : new String[] { "server.ssl", "spring.ssl" }) {
			Binder.get(this.environment)
				.bind(group, Bindable.mapOf(String.class, String.class))
				.orElse(Map.of())
				.forEach((name, value) -> given.put(group + "." + name, fromAnywhere(name, value)));
		}
		if (!this.environment.getProperty("rimebook.slips.address", "").isBlank()) {
			given.put("rimebook.slips.address", this.house.beside(port).base());
		}
		return given;
	}

	/**
	 * It is started in another folder, where the name of a file beside this one is lost.
	 */
	private static String fromAnywhere(String name, String value) {
		if (name.toLowerCase(Locale.ROOT).contains("password")) {
			return value;
		}
		try {
			Path file = Path.of(value.startsWith(FILE) ? value.substring(FILE.length()) : value);
			return Files.isRegularFile(file) ? FILE + file.toAbsolutePath() : value;
		}
		catch (InvalidPathException ex) {
			return value;
		}
	}

}
