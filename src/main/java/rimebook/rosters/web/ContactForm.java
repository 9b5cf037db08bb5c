package rimebook.rosters.web;

import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Somebody who can be reached about a team, as typed. */
record ContactForm(@Nullable String kind, @Nullable String name, @Nullable String phone, @Nullable String mail) {

	static ContactForm empty() {
		return new ContactForm(ContactView.Kind.MANAGER.name(), "", "", "");
	}

	Contacts.AddContact order(EntryId entry) {
		return new Contacts.AddContact(entry, kindOf(), text(this.name), text(this.phone), text(this.mail));
	}

	private ContactView.Kind kindOf() {
		try {
			return ContactView.Kind.valueOf(text(this.kind).toUpperCase(Locale.ROOT));
		}
		catch (IllegalArgumentException ex) {
			throw RuleViolationException.ofField("field-missing", "kind", Sentence.of("shared.field.missing"));
		}
	}

	private static String text(@Nullable String typed) {
		return (typed != null) ? typed : "";
	}

}
