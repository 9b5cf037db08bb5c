package rimebook.testsupport;

import java.util.Set;
import java.util.UUID;

import org.springframework.context.ApplicationContext;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.Role;
import rimebook.shared.Actor;

/** Lets people of any role in, each with a name of its own. */
public final class Crew {

	/** The password of everybody. */
	public static final String PASSWORD = "a password for tests";

	private Crew() {
	}

	/** Add a person with that role; returns the name to sign in with. */
	public static String add(ApplicationContext context, Role role) {
		String name = (role.name().toLowerCase() + "-" + UUID.randomUUID()).substring(0, 30);
		context.getBean(People.class)
			.add(new DraftPerson(name, displayName(name), Set.of(role), PASSWORD), Actor.system());
		return name;
	}

	/** What somebody who was added is called on pages and on the record. */
	public static String displayName(String signInName) {
		return "The " + signInName;
	}

	/** Add a person with that role and sign in as them. */
	public static Visitor visitor(ApplicationContext context, Role role) {
		return signIn(context, add(context, role));
	}

	/** Sign in as somebody who was added. */
	public static Visitor signIn(ApplicationContext context, String signInName) {
		int port = Integer.parseInt(context.getEnvironment().getRequiredProperty("local.server.port"));
		return Visitor.signedIn(port, signInName, PASSWORD);
	}

}
