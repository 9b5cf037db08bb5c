package rimebook.arrival.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The door of this module on the desk. */
@Configuration(proxyBeanMethods = false)
class ArrivalDesk {

	@Bean
	DeskEntry arrivalEntry() {
		return new DeskEntry(28, "/desk/arrival", "arrival");
	}

}
