package rimebook.panels.web;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.panels.DraftOfficial;
import rimebook.panels.KnownNames;
import rimebook.panels.OfficialView;
import rimebook.shared.Name;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * An official as typed.
 *
 * @param club chosen from those that are known, empty for none of them
 * @param otherClub one that is not in the list
 * @param another whether the person says that it is none of those it is near to
 */
record OfficialForm(@Nullable String name, @Nullable String club, @Nullable String otherClub, @Nullable Boolean another,
		@Nullable String qualification, @Nullable Integer version) {

	OfficialForm {
		another = Boolean.TRUE.equals(another);
	}

	static OfficialForm empty() {
		return new OfficialForm("", "", "", false, "", 0);
	}

	static OfficialForm of(OfficialView official) {
		return new OfficialForm(official.name(), official.club(), "", false, official.qualification(),
				official.version());
	}

	DraftOfficial draft(KnownNames known) {
		return new DraftOfficial(Name.required("name", this.name), club(known),
				Required.optional("qualification", this.qualification, 120));
	}

	private String club(KnownNames known) {
		String chosen = Given.text(this.club).strip();
		String typed = Given.text(this.otherClub).strip();
		if (!chosen.isEmpty() && !typed.isEmpty()) {
			throw new RuleViolationException("club-twice", "otherClub", Sentence.of("panels.club-twice"));
		}
		return known.club("otherClub", chosen.isEmpty() ? typed : chosen, Boolean.TRUE.equals(this.another));
	}

	int versionRead() {
		return (this.version != null) ? this.version : -1;
	}

}
