package rimebook.placement;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;

import rimebook.competition.JudgingMethod;

/** The ways of judging with cards of two marks. */
@Configuration(proxyBeanMethods = false)
class PlacementJudging {

	@Bean
	@Order(1)
	JudgingMethod majority() {
		return JudgingMethod.MAJORITY;
	}

	@Bean
	@Order(2)
	JudgingMethod oneByOne() {
		return JudgingMethod.ONE_BY_ONE;
	}

}
