package rimebook;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;

import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;

import rimebook.shared.Ids;

/** Time, chance and identity: what comes from outside and is replaced in tests. */
@Configuration(proxyBeanMethods = false)
class OutsideWorldConfiguration {

	/** Before anything opens the database. */
	@Bean
	static BeanFactoryPostProcessor dataFolder(Environment environment) {
		return (beans) -> DataFolder.keepToOwner(environment.getProperty("spring.datasource.url", ""));
	}

	/** Whole milliseconds, so that a time read back from any database is the same. */
	@Bean
	Clock clock() {
		return Clock.tick(Clock.systemUTC(), Duration.ofMillis(1));
	}

	@Bean
	SecureRandom secureRandom() {
		return new SecureRandom();
	}

	@Bean
	Ids ids(Clock clock, SecureRandom random) {
		return new Ids(clock, random);
	}

}
