package rimebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

import org.springframework.context.MessageSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** Whatever lies in {@code messages} is read: a module brings its words with it. */
@Configuration(proxyBeanMethods = false)
class MessageFiles {

	@Bean
	MessageSource messageSource() throws IOException {
		ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
		messages.setDefaultEncoding(StandardCharsets.UTF_8.name());
		messages.setFallbackToSystemLocale(false);
		messages.setBasenames(names());
		return messages;
	}

	private static String[] names() throws IOException {
		Resource[] files = new PathMatchingResourcePatternResolver().getResources("classpath*:messages/*.properties");
		return Stream.of(files)
			.map((file) -> String.valueOf(file.getFilename()))
			.map((name) -> "messages/" + name.replaceAll("(_\\w+)?\\.properties$", ""))
			.distinct()
			.sorted()
			.toArray(String[]::new);
	}

}
