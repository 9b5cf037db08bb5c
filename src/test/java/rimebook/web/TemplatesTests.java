package rimebook.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A condition inside another one needs brackets in Thymeleaf's expressions; without them
 * the page fails only where the inner one is reached. Inside {@code ${...}} another
 * language is spoken, which needs none.
 */
class TemplatesTests {

	private static final Path TEMPLATES = Path.of("src/main/resources/templates");

	private static final Pattern ATTRIBUTE = Pattern.compile("th:[a-z-]+=\"([^\"]*)\"");

	private static final Pattern WORDS = Pattern.compile("'[^']*'|\\|[^|]*\\|");

	private static final Pattern OTHER_LANGUAGE = Pattern.compile("[$#*@~]\\{[^{}]*}");

	private static final Pattern IN_BRACKETS = Pattern.compile("\\([^()]*\\)");

	@Test
	void aConditionInsideAnotherStandsInBrackets() throws IOException {
		List<String> found = new ArrayList<>();
		try (Stream<Path> files = Files.walk(TEMPLATES)) {
			for (Path file : files.filter((each) -> each.toString().endsWith(".html")).toList()) {
				ATTRIBUTE.matcher(Files.readString(file))
					.results()
					.filter((attribute) -> isNestedBare(attribute.group(1)))
					.map(MatchResult::group)
					.forEach((attribute) -> found.add(file + ": " + attribute));
			}
		}
		assertThat(found).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "${a} ? #{b} : ${c} ? #{d} : #{e}", "x=(${a} ? 'b' : ${c} ? 'd' : 'e')",
			"!${a} ? #{b(${c})} : #strings ? 'd' : |e|" })
	void theSearchFindsOneWithoutBrackets(String expression) {
		assertThat(isNestedBare(expression)).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = { "${a} ? #{b} : (${c} ? #{d} : #{e})", "${a ? b : c ? d : e}",
			"x=${a} ? 'b' : 'c',y=${d} ? 'e : ?' : 'f'", "${a} ?: ${b}" })
	void theSearchLeavesOthersAlone(String expression) {
		assertThat(isNestedBare(expression)).isFalse();
	}

	private static boolean isNestedBare(String attribute) {
		String rest = reduced(WORDS, attribute, "w");
		rest = reduced(OTHER_LANGUAGE, rest, "x");
		while (IN_BRACKETS.matcher(rest).find()) {
			if (IN_BRACKETS.matcher(rest).results().anyMatch((inner) -> holdsTwo(inner.group()))) {
				return true;
			}
			rest = IN_BRACKETS.matcher(rest).replaceAll("x");
		}
		return holdsTwo(rest);
	}

	/** Replace from the inside out, as often as something is left to be replaced. */
	private static String reduced(Pattern pattern, String text, String by) {
		String rest = text;
		while (pattern.matcher(rest).find()) {
			rest = pattern.matcher(rest).replaceAll(by);
		}
		return rest;
	}

	private static boolean holdsTwo(String expression) {
		return Stream.of(expression.split(",")).anyMatch((one) -> one.replace("?:", "").matches("(.*\\?){2}.*"));
	}

}
