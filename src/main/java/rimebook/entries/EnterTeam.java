package rimebook.entries;

import rimebook.competition.EventId;
import rimebook.shared.Name;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/**
 * The order to enter a team. Club and team are found by their names, whatever the case of
 * the letters, or written down if they are new. Texts are trimmed.
 *
 * @param club up to 120 characters
 * @param town where the club is at home, up to 120 characters
 * @param team up to 120 characters
 * @param spokenAs how the announcer says the team's name, up to 120 characters; empty
 * when as it is written, or as it is known already
 * @param lateReason why the entry comes after entries closed, up to 500 characters; empty
 * when it is in time
 * @throws RuleViolationException naming the field that does not fit
 */
public record EnterTeam(EventId event, String club, String town, String team, String spokenAs, String lateReason) {

	public EnterTeam {
		club = Name.required("club", club);
		town = Name.required("town", town);
		team = Name.required("team", team);
		spokenAs = Name.optional("spokenAs", spokenAs);
		lateReason = Required.optional("lateReason", lateReason, 500);
	}

}
