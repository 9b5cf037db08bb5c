package rimebook.accounts;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Name;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** What a person types to say who they are. */
public final class SignInName {

	private static final int LENGTH = 60;

	private static final Pattern FORM = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._@-]{1,59}");

	private SignInName() {
	}

	/**
	 * The name that somebody means who types this at the door, in the form in which it
	 * would be kept; whatever is typed, it is never longer than a name can be.
	 */
	public static String typed(@Nullable String text) {
		String start = (text != null) ? text.strip() : "";
		return Normalizer.normalize(start.substring(0, Math.min(start.length(), LENGTH)), Normalizer.Form.NFKC)
			.toLowerCase(Locale.ROOT);
	}

	/** Return the name as it is kept: in small letters, without blanks around it. */
	static String of(String typed) {
		String name = Name.required("signInName", typed).toLowerCase(Locale.ROOT);
		if (!FORM.matcher(name).matches()) {
			throw new RuleViolationException("sign-in-name-malformed", "signInName",
					Sentence.of("accounts.sign-in-name-malformed"));
		}
		return name;
	}

}
