package rimebook.competition;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;

import rimebook.shared.Acts;

/** The beans of this module behind its facade: import it into a slice that needs them. */
@Import({ Acts.class, Competitions.class, MoveRules.class, EventsFirst.class, RuleSets.class, JudgingMethods.class,
		StillOpen.class })
public final class CompetitionModule {

	private CompetitionModule() {
	}

	/** One that other modules would have. */
	@Bean
	static JudgingMethod majority() {
		return JudgingMethod.MAJORITY;
	}

	@Bean
	static JudgingMethod oneByOne() {
		return JudgingMethod.ONE_BY_ONE;
	}

	@Bean
	static JudgingMethod points() {
		return JudgingMethod.POINTS;
	}

}
