package rimebook.wording;

import java.io.File;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A further language is files alone: the Finnish ones are copied under another name and
 * changed a little, and the same classes, loaded with these files beside them, speak it.
 */
class FourthLanguageTests {

	private static final Locale MADE_UP = Locale.forLanguageTag("sma");

	@TempDir
	private Path folder = Path.of("");

	@Test
	void isSpokenOnceItsFilesAreThere() throws IOException, ReflectiveOperationException {
		copy("messages", "live.order.title=Made-up order");
		copy("sentences", "figure.others={0,number,:: ,_} made up");
		assertThat(Languages.SPOKEN).doesNotContain(MADE_UP);
		try (URLClassLoader house = withFiles()) {
			Class<?> languages = house.loadClass(Languages.class.getName());
			assertThat((List<?>) languages.getField("SPOKEN").get(null)).asString().contains("en", "fi", "fr", "sma");
			assertThat(said(house, "figure.others", 3)).isEqualTo("3 made up");
			assertThat(said(house, "figure.judges", 3, 3)).isEqualTo("3 tuomaria");
			assertThat(text(house, "live.order.title")).isEqualTo("Made-up order");
			assertThat(text(house, "live.find.title")).isEqualTo("Etsi joukkue");
		}
	}

	/** The last of two lines with one key counts. */
	private void copy(String kind, String changed) throws IOException {
		Path into = Files.createDirectories(this.folder.resolve(kind));
		for (Resource file : new PathMatchingResourcePatternResolver()
			.getResources("classpath*:" + kind + "/*_fi.properties")) {
			String name = String.valueOf(file.getFilename());
			String area = name.replace("_fi.properties", "");
			String more = changed.startsWith(area + ".") ? "\n" + changed + "\n" : "";
			Files.writeString(into.resolve(area + "_sma.properties"),
					file.getContentAsString(StandardCharsets.UTF_8) + more);
		}
	}

	private URLClassLoader withFiles() throws MalformedURLException {
		List<URL> places = new ArrayList<>(List.of(this.folder.toUri().toURL()));
		for (String place : Stream.of(System.getProperty("java.class.path").split(File.pathSeparator)).toList()) {
			places.add(new File(place).toURI().toURL());
		}
		return new URLClassLoader(places.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
	}

	private static String said(ClassLoader house, String key, Object... arguments) throws ReflectiveOperationException {
		Class<?> sentences = house.loadClass(Sentence.class.getName());
		Object sentence = sentences.getMethod("of", String.class, Object[].class).invoke(null, key, arguments);
		return String.valueOf(sentences.getMethod("in", Locale.class).invoke(sentence, MADE_UP));
	}

	private static String text(ClassLoader house, String key) {
		ResourceBundleMessageSource texts = new ResourceBundleMessageSource();
		texts.setBundleClassLoader(house);
		texts.setDefaultEncoding("UTF-8");
		texts.setBasename("messages/live");
		return texts.getMessage(key, null, MADE_UP);
	}

}
