package rimebook.panels;

import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Required;

/**
 * Write down what binds an official to a team.
 *
 * @param team the team's name as it is entered, up to 120 characters
 * @param lastDay the bond's last day, {@code null} while it lasts
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record DeclareInterest(OfficialId official, InterestKind kind, String team, @Nullable LocalDate lastDay) {

	public DeclareInterest {
		team = Required.text("team", team, 120);
	}

}
