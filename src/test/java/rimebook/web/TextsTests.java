package rimebook.web;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

import static org.assertj.core.api.Assertions.assertThat;

/** Every text that a page shows is a message, and every message it asks for is there. */
class TextsTests {

	private static final Pattern KEY = Pattern.compile("#\\{([a-z0-9.-]+)[}(]");

	private static final Pattern FIELD = Pattern.compile(":: [a-z]+Field\\('([A-Za-z.]+)'");

	private static final Pattern PLACE = Pattern.compile("\\{\\d");

	/** Others decide between words, which languages have more or fewer of. */
	private static final Pattern SHOWN = Pattern.compile("\\{\\d}");

	/** Modules of which everything may be read in every language. */
	private static final Set<String> WHOLE = Set.of("live", "review");

	/** What is called the same in every language. */
	private static final Set<String> NAMES = Set.of("Rimebook", "CSV", "JSON");

	/** The inside of a tag; quoted values may hold a greater-than sign. */
	private static final String ATTRIBUTES = "(?:[^>\"']|\"[^\"]*\"|'[^']*')*?";

	private static final Pattern NOT_SHOWN = Pattern
		.compile("(?s)<!--.*?-->|<script.*?</script>|<style.*?</style>|<pre.*?</pre>|<" + ATTRIBUTES
				+ "th:(u?text|replace|insert)=\"[^\"]*\"" + ATTRIBUTES + ">[^<]*|<" + ATTRIBUTES + ">");

	private static final PathMatchingResourcePatternResolver FILES = new PathMatchingResourcePatternResolver();

	@Test
	void everyMessageThatATemplateAsksForIsThere() throws IOException {
		Set<String> known = keys();
		List<String> missing = new ArrayList<>();
		for (Resource template : templates()) {
			KEY.matcher(text(template))
				.results()
				.map((MatchResult found) -> found.group(1))
				.filter((key) -> !known.contains(key))
				.forEach((key) -> missing.add(template.getFilename() + ": " + key));
		}
		assertThat(missing).isEmpty();
	}

	@Test
	void everyFieldHasANameToSpeakOfIt() throws IOException {
		Set<String> known = keys();
		List<String> nameless = new ArrayList<>();
		for (Resource template : templates()) {
			FIELD.matcher(text(template))
				.results()
				.map((MatchResult found) -> found.group(1))
				.filter((field) -> !known.contains("field." + field))
				.forEach((field) -> nameless.add(template.getFilename() + ": " + field));
		}
		assertThat(nameless).isEmpty();
	}

	@Test
	void noTemplateSaysAnythingByItself() throws IOException {
		List<String> said = new ArrayList<>();
		for (Resource template : templates()) {
			String rest = NOT_SHOWN.matcher(text(template)).replaceAll("").replaceAll("<[^>]*>", "\n");
			rest.lines()
				.map(String::strip)
				.filter((line) -> line.codePoints().filter(Character::isLetter).count() > 1)
				.filter((line) -> !NAMES.contains(line))
				.forEach((line) -> said.add(template.getFilename() + ": " + line));
		}
		assertThat(said).isEmpty();
	}

	@Test
	void noMessageIsGivenTwice() throws IOException {
		List<String> all = new ArrayList<>();
		for (Resource file : FILES.getResources("classpath*:messages/*.properties")) {
			String language = file.getFilename().replaceAll("^[a-z]+|\\.properties$", "");
			text(file).lines()
				.filter((line) -> line.matches("[a-zA-Z].*"))
				.forEach((line) -> all.add(line.split("=")[0] + language));
		}
		assertThat(all).doesNotHaveDuplicates();
	}

	/**
	 * What is told in one of the other languages is told in all of them, and with the
	 * same places to fill as in English; the desks speak English.
	 */
	@Test
	void everyLanguageSaysTheSameThings() throws IOException {
		Map<String, Map<String, Properties>> modules = languages();
		assertThat(modules).containsKeys("documents", "live", "rehearsal", "review");
		modules.forEach((module, languages) -> {
			Properties english = messages(module);
			Set<String> told = languages.values().iterator().next().stringPropertyNames();
			assertThat(english.stringPropertyNames()).as(module).containsAll(told);
			if (WHOLE.contains(module)) {
				assertThat(told).as(module).isEqualTo(english.stringPropertyNames());
			}
			languages.forEach((language, texts) -> {
				assertThat(texts.stringPropertyNames()).as(module + language).isEqualTo(told);
				told.forEach((key) -> {
					assertThat(places(PLACE, texts.getProperty(key))).as(key + language)
						.containsAll(places(PLACE, english.getProperty(key)));
					assertThat(places(SHOWN, texts.getProperty(key))).as(key + language)
						.isEqualTo(places(SHOWN, english.getProperty(key)));
				});
			});
		});
	}

	@Test
	void everyTextOfEveryLanguageCanBeFilledIn() throws IOException {
		Object[] numbers = { 1, 2, 3, 4, 5, 6, 7, 8 };
		languages().forEach((module,
				languages) -> languages.forEach((language, texts) -> texts.forEach(
						(key, text) -> assertThat(MessageFormat.format(text.toString(), numbers)).as(key + language)
							.doesNotContain("{")
							.isNotBlank())));
	}

	private static Set<String> places(Pattern place, String text) {
		return place.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
	}

	/** By module and other language, such as {@code _fr}. */
	private static Map<String, Map<String, Properties>> languages() throws IOException {
		Map<String, Map<String, Properties>> modules = new TreeMap<>();
		for (Resource file : FILES.getResources("classpath*:messages/*_*.properties")) {
			String name = file.getFilename().replace(".properties", "");
			modules.computeIfAbsent(name.replaceAll("_.*", ""), (module) -> new TreeMap<>())
				.put(name.replaceAll("^[^_]+", ""), messages(name));
		}
		return modules;
	}

	private static Properties messages(String name) {
		Properties messages = new Properties();
		try {
			messages.load(new StringReader(text(FILES.getResource("classpath:messages/" + name + ".properties"))));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return messages;
	}

	/**
	 * A text with a place to fill is read as a pattern, in which an apostrophe is written
	 * twice; any other text is shown as it stands.
	 */
	@Test
	void anApostropheIsWrittenAsItsTextIsRead() throws IOException {
		List<String> wrong = new ArrayList<>();
		for (Resource file : FILES.getResources("classpath*:messages/*.properties")) {
			text(file).lines()
				.filter((line) -> line.contains("{0}") ? line.replace("''", "").contains("'") : line.contains("''"))
				.forEach(wrong::add);
		}
		assertThat(wrong).isEmpty();
	}

	/** A number alone is that of many rulebooks. */
	@Test
	void aRuleIsNamedWithWhosItIsAndItsEdition() throws IOException {
		Pattern numbered = Pattern.compile("\\brule \\d+");
		List<String> rules = new ArrayList<>();
		for (Resource file : FILES.getResources("classpath*:messages/*.properties")) {
			text(file).lines().filter((line) -> numbered.matcher(line).find()).forEach(rules::add);
		}
		assertThat(rules).isNotEmpty()
			.allMatch((line) -> line.matches(".*\\b(ISU|Skate Canada|US Figure Skating) rule \\d+.*\\b20\\d\\d\\b.*"));
	}

	private static Resource[] templates() throws IOException {
		// The tests' own templates are no page's.
		return Stream.of(FILES.getResources("classpath*:templates/**/*.html"))
			.filter((file) -> !file.getDescription().contains("test-classes"))
			.toArray(Resource[]::new);
	}

	private static Set<String> keys() throws IOException {
		Properties messages = new Properties();
		for (Resource file : FILES.getResources("classpath*:messages/*.properties")) {
			messages.load(new StringReader(text(file)));
		}
		return new HashSet<>(messages.stringPropertyNames());
	}

	private static String text(Resource file) throws IOException {
		return file.getContentAsString(StandardCharsets.UTF_8);
	}

}
