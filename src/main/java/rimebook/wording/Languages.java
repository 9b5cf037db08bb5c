package rimebook.wording;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/**
 * The languages of public pages and documents: English, and each for which there is a
 * file of words of public pages. Nothing else makes a language known, so a further one is
 * files alone.
 */
public final class Languages {

	private static final String WORDS = "classpath*:messages/live_*.properties";

	private static final Pattern NAME = Pattern.compile("live_([a-z]{2,3})\\.properties");

	/** English first, then by the name that each has for itself. */
	public static final List<Locale> SPOKEN = of(Languages.class.getClassLoader());

	private Languages() {
	}

	/** Those whose words a class loader finds. */
	static List<Locale> of(@Nullable ClassLoader loader) {
		try {
			List<Locale> spoken = new ArrayList<>(List.of(Locale.ENGLISH));
			Stream.of(new PathMatchingResourcePatternResolver(loader).getResources(WORDS))
				.flatMap((file) -> Stream.ofNullable(file.getFilename()))
				.map(NAME::matcher)
				.filter(Matcher::matches)
				.map((name) -> Locale.forLanguageTag(name.group(1)))
				.distinct()
				.sorted(Comparator.comparing((Locale language) -> language.getDisplayLanguage(language)))
				.forEach(spoken::add);
			return List.copyOf(spoken);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
