package rimebook.pages;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.MessageSourceResolvable;
import org.thymeleaf.spring6.util.DetailedError;

/**
 * Tells people what is wrong with a form: in the order in which they meet its fields, and
 * with the fields called what the page calls them. Over HTTP the same sentences go out
 * with the names that a program sends.
 */
final class Faults {

	private static final Comparator<int[]> BY_PLACE = Arrays::compare;

	private final MessageSource messages;

	private final Locale language;

	Faults(MessageSource messages, Locale language) {
		this.messages = messages;
		this.language = language;
	}

	/**
	 * Say a refusal, with the name that stands beside the field on the page, the message
	 * {@code field.} and its name.
	 */
	public String words(MessageSourceResolvable error) {
		return this.messages.getMessage(error, this.language);
	}

	/**
	 * Sort the errors of a form.
	 * @param errors of the form, in any order
	 * @param form a record whose components stand in the order of the page; those of a
	 * nested form come where the nested form stands. The errors of any other form stay in
	 * the order in which they were found, which is that of the fields as they were sent;
	 * {@code null} if it could not even be read
	 * @return errors of no field first, then field by field
	 */
	public List<DetailedError> inOrder(List<DetailedError> errors, @Nullable Object form) {
		if (form == null || !form.getClass().isRecord()) {
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
			RecordComponent[] components = type.isRecord() ? type.getRecordComponents() : new RecordComponent[0];
			int at = names(components).indexOf(path[i]);
			place[i] = (at >= 0) ? at : Integer.MAX_VALUE;
			type = (at >= 0) ? components[at].getType() : Object.class;
		}
		return place;
	}

	private static List<String> names(RecordComponent[] components) {
		return Arrays.stream(components).map(RecordComponent::getName).toList();
	}

}
