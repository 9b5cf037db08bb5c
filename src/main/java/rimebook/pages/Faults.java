package rimebook.pages;

import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.util.ReflectionUtils;
import org.thymeleaf.spring6.util.DetailedError;

/**
 * Tells people what is wrong with a form: in the order in which they meet its fields, and
 * with the fields called what the page calls them. Over HTTP the same sentences go out
 * with the names that a program sends.
 */
final class Faults {

	private static final Comparator<int[]> BY_PLACE = Arrays::compare;

	private static final Pattern FIELD = Pattern.compile("The field '([A-Za-z.]+)'");

	private final MessageSource messages;

	private final Locale language;

	Faults(MessageSource messages, Locale language) {
		this.messages = messages;
		this.language = language;
	}

	/**
	 * Say a sentence about a field with the name that stands beside it on the page, the
	 * message {@code field.} and its name.
	 * @param sentence such as "The field 'signInName' is empty."
	 * @return such as "“Sign-in name” is empty."; unchanged if it names no field known
	 */
	public String words(String sentence) {
		return FIELD.matcher(sentence)
			.replaceAll((found) -> Matcher.quoteReplacement(Objects.requireNonNull(
					this.messages.getMessage("field." + found.group(1), null, found.group(), this.language))));
	}

	/**
	 * Sort the errors of a form.
	 * @param errors of the form, in any order
	 * @param form whose fields are declared in the order of the page; those of a nested
	 * form come where the nested form stands; {@code null} if it could not even be read,
	 * which leaves the errors as they are
	 * @return errors of no field first, then field by field
	 */
	public List<DetailedError> inOrder(List<DetailedError> errors, @Nullable Object form) {
		if (form == null) {
			return errors;
		}
		return errors.stream()
			.sorted(Comparator.comparing((DetailedError error) -> place(error, form.getClass()), BY_PLACE))
			.toList();
	}

	private static int[] place(DetailedError error, Class<?> form) {
		if (error.isGlobal()) {
			return new int[0];
		}
		Class<?> type = form;
		String[] path = error.getFieldName().split("[.\\[]");
		int[] place = new int[path.length];
		for (int i = 0; i < path.length; i++) {
			Field field = ReflectionUtils.findField(type, path[i]);
			place[i] = (field != null) ? Arrays.asList(type.getDeclaredFields()).indexOf(field) : Integer.MAX_VALUE;
			type = (field != null) ? field.getType() : Object.class;
		}
		return place;
	}

}
