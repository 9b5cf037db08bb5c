package rimebook.wording;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.util.ULocale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;

/** The files of sentences hold what the sources say, neither less nor more. */
class SentenceFilesTests {

	private static final Path SOURCES = Path.of("src", "main", "java", "rimebook");

	private static final Path FILES = Path.of("src", "main", "resources", "sentences");

	private static final Pattern FILE = Pattern.compile("([a-z]+)(?:_([a-z]{2}))?\\.properties");

	/** A literal, and whether something is appended to it. */
	private static final Pattern MADE = Pattern.compile("Sentence\\s*\\.\\s*of\\(\\s*\"([^\"]+)\"(\\s*\\+)?");

	/** What was looked for or changed meanwhile is named by a key of its own. */
	private static final Map<String, Pattern> NAMED = Map.of("shared.thing.",
			Pattern.compile("NotFoundException\\s*\\.of\\(\\s*\"([^\"]+)\""), "shared.this.",
			Pattern.compile("(?:requireSeen|ConflictException\\s*\\.stale)\\(\\s*\"([^\"]+)\""));

	private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

	private static final Set<String> KEYS = keys();

	private static final List<String> TEXTS = texts();

	static Stream<Path> files() {
		try (Stream<Path> files = Files.list(FILES)) {
			return files.sorted().toList().stream();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	@Test
	void everythingSaidHasWords() {
		Set<String> wordless = new TreeSet<>();
		for (MatchResult made : found(MADE)) {
			String key = made.group(1);
			boolean known = (made.group(2) != null) ? KEYS.stream().anyMatch((one) -> one.startsWith(key))
					: KEYS.contains(key);
			if (!known) {
				wordless.add(key);
			}
		}
		NAMED.forEach((prefix, pattern) -> found(pattern).stream()
			.map((named) -> prefix + named.group(1))
			.filter((key) -> !KEYS.contains(key))
			.forEach(wordless::add));
		assertThat(wordless).isEmpty();
		assertThat(found(MADE)).hasSizeGreaterThan(20);
	}

	/** A key is named as a whole, or by what it begins with up to a dot or a hyphen. */
	@Test
	void allWordsAreSaid() {
		Set<String> literals = found(LITERAL).stream()
			.map((literal) -> literal.group(1))
			.filter((literal) -> literal.matches("[a-z]+\\.[a-z0-9.-]*"))
			.collect(Collectors.toSet());
		assertThat(KEYS).filteredOn((key) -> literals.stream().noneMatch((literal) -> isNamedBy(key, literal)))
			.isEmpty();
	}

	private static boolean isNamedBy(String key, String literal) {
		if (!key.startsWith(literal)) {
			return false;
		}
		String rest = key.substring(literal.length());
		return rest.isEmpty() || literal.matches(".*[.-]") || rest.matches("[.-].*");
	}

	@ParameterizedTest
	@MethodSource("files")
	void everyFileIsWellFormed(Path file) {
		Matcher name = FILE.matcher(file.getFileName().toString());
		assertThat(name.matches()).isTrue();
		ULocale language = (name.group(2) != null) ? ULocale.forLanguageTag(name.group(2)) : ULocale.UK;
		read(file).forEach((key, pattern) -> {
			assertThat(key).matches("\\Q" + name.group(1) + "\\E(\\.[a-z0-9]+(-[a-z0-9]+)*)+");
			assertThat(pattern).as(key).isNotEmpty();
			assertThat(new MessageFormat(pattern, language).usesNamedArguments()).as(key).isFalse();
		});
	}

	/** A word may have to agree in number where the English one stays as it is. */
	@ParameterizedTest
	@MethodSource("files")
	void aTranslationSaysTheSameOfTheSame(Path file) {
		Matcher name = FILE.matcher(file.getFileName().toString());
		assertThat(name.matches()).isTrue();
		Map<String, String> english = read(file.resolveSibling(name.group(1) + ".properties"));
		Map<String, String> words = read(file);
		assertThat(words.keySet()).isEqualTo(english.keySet());
		words.forEach((key, pattern) -> {
			Set<String> further = arguments(pattern);
			further.removeAll(arguments(english.get(key)));
			assertThat(arguments(pattern)).as(key).containsAll(arguments(english.get(key)));
			assertThat(further).as(key).allSatisfy((number) -> assertThat(pattern).contains("{" + number + ",plural,"));
		});
	}

	private static Set<String> arguments(String pattern) {
		MessagePattern parts = new MessagePattern(pattern);
		return IntStream.range(0, parts.countParts())
			.mapToObj(parts::getPart)
			.filter((part) -> part.getType() == MessagePattern.Part.Type.ARG_NUMBER)
			.map((part) -> String.valueOf(part.getValue()))
			.collect(Collectors.toCollection(TreeSet::new));
	}

	private static List<MatchResult> found(Pattern pattern) {
		return TEXTS.stream().flatMap((text) -> pattern.matcher(text).results()).toList();
	}

	private static Set<String> keys() {
		return files().filter((file) -> !file.getFileName().toString().contains("_"))
			.flatMap((file) -> read(file).keySet().stream())
			.collect(Collectors.toCollection(TreeSet::new));
	}

	private static Map<String, String> read(Path file) {
		try (Reader reader = Files.newBufferedReader(file)) {
			Properties words = new Properties();
			words.load(reader);
			Map<String, String> sorted = new TreeMap<>();
			words.stringPropertyNames().forEach((key) -> sorted.put(key, words.getProperty(key)));
			return sorted;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static List<String> texts() {
		try (Stream<Path> files = Files.walk(SOURCES)) {
			return files.filter((file) -> file.toString().endsWith(".java"))
				.sorted()
				.map(SentenceFilesTests::text)
				.toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static String text(Path file) {
		try {
			return Files.readString(file);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
