package rimebook.rosters;

import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

import rimebook.entries.ClubView;
import rimebook.shared.Name;
import rimebook.shared.Required;

/**
 * What a person writes down of somebody who skates.
 *
 * @param birthDate {@code null} where it is not known yet
 * @param membershipNumber as the federation writes it, up to 40 characters; empty where
 * it is not known yet
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record DraftSkater(String givenName, String familyName, @Nullable LocalDate birthDate, String membershipNumber,
		ClubView.Id club) {

	public DraftSkater {
		givenName = Name.required("givenName", givenName);
		familyName = Name.required("familyName", familyName);
		membershipNumber = Required.optional("membershipNumber", membershipNumber, 40);
	}

	String name() {
		return this.givenName + " " + this.familyName;
	}

	SkaterView.Facts facts() {
		return new SkaterView.Facts(this.givenName, this.familyName, this.birthDate, this.membershipNumber, this.club);
	}

}
