package rimebook.panels.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The doors of this module on the desk. */
@Configuration(proxyBeanMethods = false)
class PanelsDesk {

	@Bean
	DeskEntry panelEntry() {
		return new DeskEntry(50, "/desk/panel", "panel");
	}

	@Bean
	DeskEntry officialsEntry() {
		return new DeskEntry(51, "/desk/officials", "officials");
	}

}
