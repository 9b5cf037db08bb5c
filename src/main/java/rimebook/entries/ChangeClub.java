package rimebook.entries;

import rimebook.shared.Name;

/**
 * The order to mend what is written down of a club.
 *
 * @param version as it was read, so that nobody overwrites another's change
 * @param name up to 120 characters, unlike every other club's
 * @param town where the club is at home, up to 120 characters
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record ChangeClub(ClubId club, int version, String name, String town) {

	public ChangeClub {
		name = Name.required("name", name);
		town = Name.required("town", town);
	}

}
