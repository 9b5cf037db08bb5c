package rimebook.panels;

import rimebook.shared.Name;
import rimebook.shared.Required;

/**
 * An official as written into the register. Texts are trimmed.
 *
 * @param name up to 120 characters, unlike every other official's
 * @param club the club that decides conflicts, up to 120 characters; may be empty
 * @param qualification level and discipline as text, up to 120 characters; may be empty
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record DraftOfficial(String name, String club, String qualification) {

	public DraftOfficial {
		name = Name.required("name", name);
		club = Required.optional("club", club, 120);
		qualification = Required.optional("qualification", qualification, 120);
	}

}
