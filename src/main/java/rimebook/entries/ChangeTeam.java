package rimebook.entries;

import rimebook.shared.Name;

/**
 * The order to mend what is written down of a team.
 *
 * @param version as it was read, so that nobody overwrites another's change
 * @param name up to 120 characters, unlike every other team's of the club
 * @param spokenAs how the announcer says the name, up to 120 characters; empty when as it
 * is written
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record ChangeTeam(TeamId team, int version, String name, String spokenAs) {

	public ChangeTeam {
		name = Name.required("name", name);
		spokenAs = Name.optional("spokenAs", spokenAs);
	}

}
