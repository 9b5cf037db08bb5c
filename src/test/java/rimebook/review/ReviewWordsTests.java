package rimebook.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class ReviewWordsTests {

	private static final Pattern PLACE = Pattern.compile("\\{\\d");

	@ParameterizedTest
	@ValueSource(strings = { "_fi", "_fr" })
	void everyLanguageSaysTheSameThings(String language) {
		Properties english = texts("");
		Properties other = texts(language);
		assertThat(other.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
		english.stringPropertyNames()
			.forEach((key) -> assertThat(places(other.getProperty(key))).as(key)
				.isEqualTo(places(english.getProperty(key))));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "_fi", "_fr" })
	void everyTextCanBeFilledIn(String language) {
		texts(language).forEach((key, text) -> assertThat(MessageFormat.format(text.toString(), 1, 2, 1)).as("%s", key)
			.doesNotContain("{")
			.isNotBlank());
	}

	private static Set<String> places(String text) {
		return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
	}

	private static Properties texts(String language) {
		Properties texts = new Properties();
		String file = "/messages/review" + language + ".properties";
		try (InputStream bytes = Objects.requireNonNull(ReviewWordsTests.class.getResourceAsStream(file), file);
				Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8)) {
			texts.load(text);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return texts;
	}

}
