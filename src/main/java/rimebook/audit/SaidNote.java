package rimebook.audit;

import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

import rimebook.shared.SentenceJson;
import rimebook.wording.Sentence;

/**
 * What a published version says of itself by key and arguments, for readers of other
 * languages. No line attests it; it has to come out in English as the note that a line
 * tells.
 */
final class SaidNote {

	/** How a note begins where its cause stands before it. */
	private static final Pattern LEAD = Pattern.compile("^(Corrected|Opened again): ");

	private static final SentenceJson JSON = new SentenceJson();

	private SaidNote() {
	}

	/**
	 * Tell whether both say the same.
	 * @param said as stored, {@code null} where the note is words alone
	 */
	static boolean fits(@Nullable String said, String note) {
		try {
			Sentence sentence = JSON.convertToEntityAttribute(said);
			return sentence == null || sentence.english().equals(LEAD.matcher(note).replaceFirst(""));
		}
		catch (JacksonException | IllegalArgumentException ex) {
			return false;
		}
	}

}
