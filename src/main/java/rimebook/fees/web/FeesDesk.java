package rimebook.fees.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The door of this module on the desk. */
@Configuration(proxyBeanMethods = false)
class FeesDesk {

	@Bean
	DeskEntry feesEntry() {
		return new DeskEntry(27, "/desk/fees", "fees");
	}

}
