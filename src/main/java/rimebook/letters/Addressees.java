package rimebook.letters;

import java.util.Collection;
import java.util.Map;

import rimebook.entries.EntryId;

/** Tells to whom a letter to a team goes. Whoever knows the people implements it. */
public interface Addressees {

	/**
	 * Who is written to, with one question for all of them; a team of which nobody is
	 * known may be left out.
	 */
	Map<EntryId, Addressee> of(Collection<EntryId> entries);

	/**
	 * Who is written to.
	 *
	 * @param name may be empty
	 * @param mail an address of electronic mail, empty where none is known: such a letter
	 * can only be printed
	 */
	record Addressee(String name, String mail) {

		static final Addressee NOBODY = new Addressee("", "");

		/** Tell whether mail can reach them. */
		public boolean hasMail() {
			return !this.mail.isEmpty();
		}

	}

}
