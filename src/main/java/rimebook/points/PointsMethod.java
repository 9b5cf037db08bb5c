package rimebook.points;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;

import rimebook.competition.JudgingMethod;

/** The way of judging with called elements, grades and components. */
@Configuration(proxyBeanMethods = false)
class PointsMethod {

	@Bean
	@Order(3)
	JudgingMethod points() {
		return JudgingMethod.POINTS;
	}

}
