package rimebook.letters;

import java.util.Locale;
import java.util.UUID;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.wording.Sentence;

/**
 * Puts the personal link into a letter that is about to be handed over, and tells whoever
 * made it how that ended. The letter that is kept has a bracket in its place.
 */
@Component
class LinkedLetters {

	private static final Log log = LogFactory.getLog(LinkedLetters.class);

	private final LetterStore store;

	private final PersonalLinks links;

	LinkedLetters(LetterStore store, PersonalLinks links) {
		this.store = store;
		this.links = links;
	}

	/** What stands in the place of a link in every letter that is kept. */
	static String notKept(Locale language) {
		return Sentence.of("letters.personal-link").in(language);
	}

	/**
	 * A body with an address in the place of the bracket.
	 * @param at where the bracket begins
	 */
	static String with(String body, int at, String address) {
		return body.substring(0, at) + address + body.substring(body.indexOf(']', at) + 1);
	}

	/**
	 * Make the link of a letter, if it takes one along.
	 * @throws rimebook.shared.RimebookException saying why the team is given none
	 */
	Ready ready(LetterQueue.Claimed letter) {
		Integer at = letter.linkAt();
		if (at == null) {
			return new Ready(letter, null);
		}
		LetterView kept = this.store.letter(letter.id()).orElseThrow();
		SendingView sending = this.store.sending(kept.sending()).orElseThrow();
		String address = this.links.setOut(new PersonalLinks.Errand(letter.id(), sending.competition(), kept.entry(),
				sending.made().by(), sending.made().at()));
		Draft.Content content = new Draft.Content(letter.content().subject(),
				with(letter.content().body(), at, address));
		return new Ready(letter.saying(content), address);
	}

	/**
	 * Say how it ended. Where that is not known nothing is said: the link opens the page
	 * as soon as somebody uses it.
	 */
	void ended(Ready letter, Carrier.Ending ending) {
		if (letter.address() == null || ending == Carrier.Ending.DOUBTFUL) {
			return;
		}
		UUID id = letter.letter().id();
		try {
			if (ending == Carrier.Ending.SENT) {
				this.links.arrived(id);
			}
			else {
				this.links.lost(id);
			}
		}
		catch (RuntimeException ex) {
			log.warn("What became of the link in letter " + id + " is not noted; it holds once it is used", ex);
		}
	}

	/**
	 * A letter as it is handed over.
	 *
	 * @param address the link in it, {@code null} where it takes none along
	 */
	record Ready(LetterQueue.Claimed letter, @Nullable String address) {

		/** What a server said, without the link, which it may have said again. */
		String told(String words) {
			String link = this.address;
			if (link == null) {
				return words;
			}
			return words.replace(link, notKept(Locale.ENGLISH))
				.replace(link.substring(link.indexOf('#') + 1), notKept(Locale.ENGLISH));
		}

		/** Never the link. */
		@Override
		public String toString() {
			return "letter " + this.letter.id();
		}

	}

}
