package rimebook.competition.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The door of this module on the desk. */
@Configuration(proxyBeanMethods = false)
class CompetitionDesk {

	@Bean
	DeskEntry competitionsEntry() {
		return new DeskEntry(10, "/desk/competitions", "competitions");
	}

}
