package rimebook.panels.web;

import org.jspecify.annotations.Nullable;

import rimebook.panels.DraftOfficial;
import rimebook.panels.OfficialView;
import rimebook.shared.Name;
import rimebook.shared.Required;

/** An official as typed. */
record OfficialForm(@Nullable String name, @Nullable String club, @Nullable String qualification,
		@Nullable Integer version) {

	static OfficialForm empty() {
		return new OfficialForm("", "", "", 0);
	}

	static OfficialForm of(OfficialView official) {
		return new OfficialForm(official.name(), official.club(), official.qualification(), official.version());
	}

	DraftOfficial draft() {
		return new DraftOfficial(Name.required("name", this.name), Required.optional("club", this.club, 120),
				Required.optional("qualification", this.qualification, 120));
	}

	int versionRead() {
		return (this.version != null) ? this.version : -1;
	}

}
