package rimebook.commentary.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The way to the links of commentators from the desk. */
@Configuration(proxyBeanMethods = false)
class CommentaryDesk {

	@Bean
	DeskEntry commentaryDeskEntry() {
		return new DeskEntry(66, "/desk/commentary", "commentary");
	}

}
