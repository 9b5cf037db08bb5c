package rimebook.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Where slips and documents may send their readers: to the address that is set for this
 * house, or to one that this machine has. Never to what a request names, since whoever
 * makes the request names it.
 */
@Component
@EnableConfigurationProperties(HouseSettings.class)
public class HouseAddresses {

	private static final List<String> SIGNS_OF_TLS = List.of("server.ssl.bundle", "server.ssl.key-store",
			"server.ssl.certificate");

	private final HouseSettings settings;

	private final LanAddresses lan;

	private final Environment environment;

	HouseAddresses(HouseSettings settings, LanAddresses lan, Environment environment) {
		this.settings = settings;
		this.lan = lan;
		this.environment = environment;
	}

	/**
	 * All of them, never none: the one that is set first, then those of this machine in
	 * its networks, and where there are none, the machine's name for itself.
	 */
	public List<HouseAddress> all() {
		List<HouseAddress> all = new ArrayList<>();
		if (!this.settings.address().isBlank()) {
			all.add(HouseAddress.of(this.settings.address()));
		}
		this.lan.all().stream().map(own()::at).forEach(all::add);
		return all.isEmpty() ? List.of(own()) : all.stream().distinct().toList();
	}

	/** All of them, to choose from. */
	public List<Choice> choices() {
		return all().stream().map((one) -> new Choice(one.base(), one.base())).toList();
	}

	/**
	 * Where somebody reaches this house who is not in it: the address that is set for
	 * documents, else the first of all.
	 */
	public HouseAddress farAway() {
		String documents = this.environment.getProperty("rimebook.documents.address", "").strip();
		return documents.isEmpty() ? all().get(0) : HouseAddress.of(documents);
	}

	/** This service as its own machine reaches it. */
	public HouseAddress own() {
		return HouseAddress.of(scheme() + "://localhost:" + port());
	}

	/**
	 * Where another service of this machine is reached, at another port: under the name
	 * that is set for this house, unless that belongs to something in front of it, which
	 * knows of no other port.
	 */
	public HouseAddress beside(int port) {
		HouseAddress own = own();
		return all().stream().filter(own::isLike).findFirst().orElse(own).at(port);
	}

	/**
	 * The one that was chosen, the first where none was.
	 * @throws RuleViolationException {@code address-malformed} or {@code address-unknown}
	 */
	public HouseAddress chosen(String typed) {
		List<HouseAddress> all = all();
		if (typed.isBlank()) {
			return all.get(0);
		}
		HouseAddress chosen = HouseAddress.of(typed);
		return Stream.of(chosen).filter(all::contains).findFirst().orElseThrow(() -> unknown(chosen));
	}

	private static RuleViolationException unknown(HouseAddress address) {
		return new RuleViolationException("address-unknown", "address",
				Sentence.of("house.address-unknown", address.base()));
	}

	private String scheme() {
		return SIGNS_OF_TLS.stream().anyMatch(this.environment::containsProperty) ? "https" : "http";
	}

	private String port() {
		return this.environment.getProperty("local.server.port", this.environment.getProperty("server.port", "8080"));
	}

}
