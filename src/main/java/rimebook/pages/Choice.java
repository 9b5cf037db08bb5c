package rimebook.pages;

/**
 * One line of a list to choose from, where the words are data ("Club Seven") and not
 * messages.
 *
 * @param value what the form sends
 * @param text what the person reads
 */
public record Choice(String value, String text) {

	/** Offer a thing by its identity, such as an id record, under its name. */
	public static Choice of(Object value, String text) {
		return new Choice(value.toString(), text);
	}

}
