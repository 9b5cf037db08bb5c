package rimebook.letters;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.mail.javamail.JavaMailSenderImpl;

import rimebook.pages.DeskEntry;

/** Letters go by mail where a server is set by {@code spring.mail.host}. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(LetterSettings.class)
class LettersConfiguration {

	@Bean
	Carrier letterCarrier(ObjectProvider<JavaMailSenderImpl> server, LetterSettings settings, Environment environment) {
		String sender = settings.sender().isBlank() ? environment.getProperty("spring.mail.username", "")
				: settings.sender();
		// Real people are never written to from a rehearsal, whatever is set.
		boolean rehearsed = environment.matchesProfiles("rehearsal");
		return new Carrier(rehearsed ? null : server.getIfAvailable(), sender.strip(), settings.replyTo().strip());
	}

	@Bean
	DeskEntry lettersDeskEntry() {
		return new DeskEntry(27, "/desk/letters", "letters");
	}

}
