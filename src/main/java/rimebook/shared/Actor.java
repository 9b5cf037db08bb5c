package rimebook.shared;

import java.io.Serializable;
import java.util.Objects;

/**
 * Who acts: an identity that never changes, the name that stands on the record, the role
 * they act in, and the device they act from. For a judge the name is the seat ("Judge 3,
 * Adult"), since a seat slip, not a person, is what signs in.
 *
 * <p>
 * Two acts that must come from two people are told apart by the identity: a name can be
 * changed, and two people can have the same.
 *
 * @param id who it is, for ever ("person:…" with the account's id, "seat:…" with the
 * seat's; "name:…" where there is no account, as for the service itself)
 * @param name the person or seat as printed on the record
 * @param role the role acted in, in small letters ("referee", "judge", "system")
 * @param device where the act came from: an address and a short description, or "server"
 */
public record Actor(String id, String name, String role, String device) implements Serializable {

	private static final Actor SYSTEM = new Actor("Rimebook", "system", "server");

	public Actor {
		Objects.requireNonNull(id, "id");
		Objects.requireNonNull(name, "name");
		Objects.requireNonNull(role, "role");
		Objects.requireNonNull(device, "device");
	}

	/** Somebody without an account, known by name alone. */
	public Actor(String name, String role, String device) {
		this("name:" + name, name, role, device);
	}

	/** The service itself, for acts that follow from others without a person's hand. */
	public static Actor system() {
		return SYSTEM;
	}

	/** Tell whether this is who was noted down under that identity; nobody has none. */
	public boolean hasId(String noted) {
		return this.id.equals(noted);
	}

	/**
	 * Tell whether this is who was noted down under that identity, or under that name
	 * where no account was noted with it.
	 */
	public boolean isNotedAs(String noted, String name) {
		boolean byName = noted.isEmpty() || noted.startsWith("name:");
		return hasId(noted) || (byName && goesBy(name));
	}

	/**
	 * Tell whether somebody who wrote down that name by hand means this one: blanks, case
	 * and the way letters are composed do not matter.
	 */
	public boolean goesBy(String written) {
		return Name.compared(this.name).equals(Name.compared(written));
	}

	/**
	 * Tell whether both are the same person or seat, whatever name, role or device they
	 * use.
	 */
	public boolean isSamePersonAs(Actor other) {
		return this.id.equals(other.id);
	}

}
