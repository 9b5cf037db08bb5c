package rimebook.panels;

import java.security.SecureRandom;
import java.time.Clock;

import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;

import rimebook.competition.JudgingMethod;
import rimebook.shared.Acts;
import rimebook.shared.Ids;

/** Panels and the modules they stand on, for tests with a database. */
@TestConfiguration(proxyBeanMethods = false)
@ComponentScan(basePackages = { "rimebook.competition", "rimebook.entries", "rimebook.panels" },
		excludeFilters = @ComponentScan.Filter(type = FilterType.REGEX,
				pattern = { ".*\\.web\\..*", ".*Tests.*", ".*Module" }))
@ComponentScan(basePackages = "rimebook.accounts", useDefaultFilters = false, includeFilters = @ComponentScan.Filter(
		type = FilterType.REGEX,
		pattern = ".*\\.(SeatCodes|SecretTokens|CrewSigns|CodeDigests|ShownCodes|CodeGuessing|AttemptTally|SeatTakeovers)"))
class PanelsModule {

	@Bean
	Clock clock() {
		return Clock.systemUTC();
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
	Ids ids(Clock clock, SecureRandom random) {
		return new Ids(clock, random);
	}

	@Bean
	Segments segments() {
		return new Segments();
	}

}
