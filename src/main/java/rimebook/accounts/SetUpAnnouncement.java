package rimebook.accounts;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Prints the set-up link to the console and the log while it is needed. */
@Component
class SetUpAnnouncement {

	private static final Log log = LogFactory.getLog(SetUpAnnouncement.class);

	private static final String TEXT = """

			  Rimebook has no administrator yet. Open this link once to make one:

			      %s

			  It is good for 24 hours, and replaced at each start until it is used.
			""";

	private final SetUpLink link;

	private final Environment environment;

	SetUpAnnouncement(SetUpLink link, Environment environment) {
		this.link = link;
		this.environment = environment;
	}

	@EventListener(ApplicationReadyEvent.class)
	void announce() {
		this.link.renew().map(this::address).ifPresent(SetUpAnnouncement::print);
	}

	private String address(String token) {
		String port = this.environment.getProperty("local.server.port", "8080");
		return "http://localhost:" + port + "/set-up/" + token;
	}

	private static void print(String address) {
		System.out.println(TEXT.formatted(address));
		log.warn("No administrator yet; one-time set-up link: " + address);
	}

}
