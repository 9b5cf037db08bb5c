package rimebook.draw;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;

import rimebook.competition.JudgingMethod;
import rimebook.shared.Acts;
import rimebook.shared.Ids;

/** The draw and the modules it stands on, for tests with a database. */
@TestConfiguration(proxyBeanMethods = false)
@ComponentScan(basePackages = { "rimebook.competition", "rimebook.entries", "rimebook.draw" },
		excludeFilters = @ComponentScan.Filter(type = FilterType.REGEX,
				pattern = { ".*\\.web\\..*", ".*Tests.*", ".*Module" }))
class DrawModule {

	static final Instant NOW = Instant.parse("2027-02-12T17:30:00Z");

	@Bean
	Clock clock() {
		return Clock.fixed(NOW, ZoneOffset.UTC);
	}

	@Bean
	SecureRandom random() {
		return new SecureRandom();
	}

	@Bean
	JudgingMethod majority() {
		return JudgingMethod.MAJORITY;
	}

	@Bean
	JudgingMethod points() {
		return JudgingMethod.POINTS;
	}

	@Bean
	Acts acts(Ids ids, Clock clock, ApplicationEventPublisher events) {
		return new Acts(ids, clock, events);
	}

	@Bean
	Ids ids(SecureRandom random) {
		return new Ids(Clock.systemUTC(), random);
	}

	@Bean
	Outcome outcome() {
		return new Outcome();
	}

	@Bean
	Opening opening() {
		return new Opening();
	}

}
