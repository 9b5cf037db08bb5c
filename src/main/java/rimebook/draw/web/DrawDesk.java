package rimebook.draw.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The draw's door on the desk. */
@Configuration(proxyBeanMethods = false)
class DrawDesk {

	@Bean
	DeskEntry drawEntry() {
		return new DeskEntry(40, "/desk/draw", "draw");
	}

}
