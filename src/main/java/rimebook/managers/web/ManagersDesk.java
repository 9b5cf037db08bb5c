package rimebook.managers.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The way to the links of teams from the desk. */
@Configuration(proxyBeanMethods = false)
class ManagersDesk {

	@Bean
	DeskEntry managersDeskEntry() {
		return new DeskEntry(26, "/desk/managers", "managers");
	}

}
