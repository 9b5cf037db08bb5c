package rimebook.accounts;

import java.security.Principal;

/**
 * Whoever shows the link of a team: one of those who manage it, nobody knows which. The
 * name says as much on the record.
 *
 * @param pass what the link opens
 */
public record TeamPrincipal(TeamLinks.Pass pass) implements Principal {

	/** The authority of whoever shows such a link; no person has it. */
	public static final String AUTHORITY = "ROLE_MANAGER";

	/** The role as it stands on the record. */
	public static final String ROLE = "manager";

	@Override
	public String getName() {
		return "Manager, by the link of the team";
	}

	/** Who acts, for ever: the link, which is the same when it is made anew. */
	public String identity() {
		return "team-link:" + this.pass.id();
	}

}
