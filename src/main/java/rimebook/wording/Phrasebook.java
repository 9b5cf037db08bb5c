package rimebook.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

import com.ibm.icu.text.ListFormatter;
import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import org.jspecify.annotations.Nullable;

/**
 * The words of one language. ICU writes numbers, places and enumerations as the language
 * does; the files say the rest.
 */
final class Phrasebook {

	private static final Map<String, Phrasebook> BOOKS = new ConcurrentHashMap<>();

	private final String language;

	private final ULocale locale;

	private final Map<String, Properties> areas = new ConcurrentHashMap<>();

	/** Patterns read once; each is locked while it formats, since none can be shared. */
	private final Map<String, Optional<MessageFormat>> patterns = new ConcurrentHashMap<>();

	private Phrasebook(String language) {
		this.language = language;
		this.locale = isEnglish(language) ? ULocale.UK : ULocale.forLanguageTag(language);
	}

	/** The words of a language, whatever country it is spoken in. */
	static Phrasebook of(Locale locale) {
		return BOOKS.computeIfAbsent(locale.getLanguage(), Phrasebook::new);
	}

	private static boolean isEnglish(String language) {
		return language.equals(Locale.ENGLISH.getLanguage());
	}

	String say(Sentence sentence) {
		Object[] arguments = sentence.arguments().stream().map(this::argument).toArray();
		if (sentence.isAsItStands()) {
			return arguments[0].toString();
		}
		MessageFormat pattern = this.patterns.computeIfAbsent(sentence.key(), this::pattern).orElse(null);
		if (pattern != null) {
			synchronized (pattern) {
				return pattern.format(arguments);
			}
		}
		return isEnglish(this.language) ? wordless(sentence) : of(Locale.ENGLISH).say(sentence);
	}

	boolean has(Sentence sentence) {
		return isEnglish(this.language) || (!sentence.isAsItStands() && words(sentence.key()) != null);
	}

	/** A page that cannot say one sentence still says all others. */
	private static String wordless(Sentence sentence) {
		return sentence.key() + sentence.arguments();
	}

	private Object argument(Object argument) {
		if (argument instanceof Sentence part) {
			return say(part);
		}
		if (argument instanceof Collection<?> several) {
			List<String> parts = several.stream().map((one) -> argument(one).toString()).toList();
			return ListFormatter.getInstance(this.locale).format(parts);
		}
		return argument;
	}

	private Optional<MessageFormat> pattern(String key) {
		return Optional.ofNullable(words(key)).map((pattern) -> new MessageFormat(pattern, this.locale));
	}

	private @Nullable String words(String key) {
		int dot = key.indexOf('.');
		String area = (dot < 0) ? key : key.substring(0, dot);
		return this.areas.computeIfAbsent(area, this::read).getProperty(key);
	}

	/** Empty where the language has no file for the area. */
	private Properties read(String area) {
		String suffix = isEnglish(this.language) ? "" : "_" + this.language;
		Properties words = new Properties();
		try (InputStream file = Phrasebook.class.getResourceAsStream("/sentences/" + area + suffix + ".properties")) {
			if (file != null) {
				words.load(new InputStreamReader(file, StandardCharsets.UTF_8));
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return words;
	}

}
