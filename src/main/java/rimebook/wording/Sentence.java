package rimebook.wording;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;

/**
 * A sentence, or a part of one, that is said in the language of whoever reads it. Its
 * words lie in {@code sentences/<area>.properties} and, for further languages,
 * {@code sentences/<area>_<language>.properties}, where the area is the key up to its
 * first dot; a pattern follows the rules of ICU's {@code MessageFormat}. Immutable.
 * <p>
 * As JSON it is an object with {@code key} and {@code arguments}; words that are the same
 * in every language, and whole sentences stored before there were keys, are a plain
 * string and are said as they stand.
 */
public final class Sentence implements Serializable {

	/** Nothing to say. */
	public static final Sentence NONE = said("");

	private static final long serialVersionUID = 1L;

	private static final String KEY = "key";

	private static final String ARGUMENTS = "arguments";

	/** Of words that are said as they stand; they are the only argument. */
	private static final String AS_IT_STANDS = "";

	private final String key;

	private final ArrayList<Serializable> arguments;

	private Sentence(String key, Collection<?> arguments) {
		this.key = key;
		this.arguments = new ArrayList<>(arguments.stream().map(Sentence::argument).toList());
	}

	/**
	 * Make a sentence.
	 * @param key its name, whose first part names the file of its words
	 * @param arguments each a whole number, a text that is said as it stands (a name, a
	 * code, a decimal figure), another sentence, or a list of these, which is said as the
	 * language enumerates
	 * @throws IllegalArgumentException where an argument is nothing of the kind
	 */
	public static Sentence of(String key, Object... arguments) {
		if (key.isEmpty()) {
			throw new IllegalArgumentException("A sentence has a key");
		}
		return new Sentence(key, Arrays.asList(arguments));
	}

	/**
	 * Take words as they stand, in whatever language they are.
	 * @param words what is said
	 */
	public static Sentence said(String words) {
		return new Sentence(AS_IT_STANDS, List.of(words));
	}

	/**
	 * Name something as a rule set does, which keeps its names in English.
	 * @param english the name, such as "Composition"; said as it stands where the trade
	 * has no word for it here
	 */
	public static Sentence ofTrade(String english) {
		return TradeName.of(english);
	}

	/**
	 * Read what {@link #written()} wrote.
	 * @throws IllegalArgumentException where it is nothing of the kind
	 */
	@JsonCreator(mode = JsonCreator.Mode.DELEGATING)
	static Sentence read(Object written) {
		Serializable argument = argument(written);
		return (argument instanceof Sentence sentence) ? sentence : said(argument.toString());
	}

	private static Serializable argument(Object argument) {
		if (argument instanceof Sentence words && words.isAsItStands()) {
			return words.arguments.get(0);
		}
		if (argument instanceof Sentence || argument instanceof String || argument instanceof Integer) {
			return (Serializable) argument;
		}
		if (argument instanceof Map<?, ?> written && written.get(KEY) instanceof String key
				&& written.get(ARGUMENTS) instanceof Collection<?> arguments) {
			return new Sentence(key, arguments);
		}
		if (argument instanceof Collection<?> several) {
			return new ArrayList<>(several.stream().map(Sentence::argument).toList());
		}
		throw new IllegalArgumentException("'" + argument + "' cannot stand in a sentence");
	}

	/** What it is made of, for JSON: a string, or a map of key and arguments. */
	@JsonValue
	Object written() {
		if (isAsItStands()) {
			return this.arguments.get(0);
		}
		Map<String, Object> written = new LinkedHashMap<>();
		written.put(KEY, this.key);
		written.put(ARGUMENTS, List.copyOf(this.arguments));
		return written;
	}

	/** Tell whether it is words alone, without a key. */
	public boolean isAsItStands() {
		return this.key.equals(AS_IT_STANDS);
	}

	/**
	 * The same sentence with other words for some of its parts.
	 * @param words what is said instead of a part; the part itself where it stays
	 */
	public Sentence replacing(UnaryOperator<Sentence> words) {
		return new Sentence(this.key, this.arguments.stream().map((argument) -> replaced(argument, words)).toList());
	}

	private static Object replaced(Object argument, UnaryOperator<Sentence> words) {
		if (argument instanceof Collection<?> several) {
			return several.stream().map((one) -> replaced(one, words)).toList();
		}
		return (argument instanceof Sentence part) ? words.apply(part).replacing(words) : argument;
	}

	/**
	 * The same sentence with other words for the names in it.
	 * @param words what a text that is said as it stands becomes
	 */
	Sentence renaming(UnaryOperator<String> words) {
		return new Sentence(this.key, this.arguments.stream().map((argument) -> renamed(argument, words)).toList());
	}

	private static Object renamed(Object argument, UnaryOperator<String> words) {
		if (argument instanceof Collection<?> several) {
			return several.stream().map((one) -> renamed(one, words)).toList();
		}
		if (argument instanceof String name) {
			return words.apply(name);
		}
		return (argument instanceof Sentence part) ? part.renaming(words) : argument;
	}

	/** The name of its words. */
	public String key() {
		return this.key;
	}

	/** What its words are said with, in the order of {@link #of}. */
	public List<Serializable> arguments() {
		return List.copyOf(this.arguments);
	}

	/** Tell whether there is nothing to say. */
	public boolean isEmpty() {
		return equals(NONE);
	}

	/** Say it in English: the language of the record, of CSV and of the command line. */
	public String english() {
		return in(Locale.ENGLISH);
	}

	/**
	 * Say it.
	 * @param language where it has no words in this one, English is spoken
	 */
	public String in(Locale language) {
		return Phrasebook.of(language).say(this);
	}

	/**
	 * Tell whether the language has words for it. Words that are said as they stand may
	 * be in another one: those stored before there were keys are English.
	 */
	public boolean isSpokenIn(Locale language) {
		return isEmpty() || Phrasebook.of(language).has(this);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Sentence sentence && this.key.equals(sentence.key)
				&& this.arguments.equals(sentence.arguments);
	}

	@Override
	public int hashCode() {
		return Objects.hash(this.key, this.arguments);
	}

	/** As in {@link #english()}. */
	@Override
	public String toString() {
		return english();
	}

}
