package rimebook.rosters.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The door of this module on the desk. */
@Configuration(proxyBeanMethods = false)
class RostersDesk {

	@Bean
	DeskEntry rostersEntry() {
		return new DeskEntry(25, "/desk/rosters", "rosters");
	}

}
