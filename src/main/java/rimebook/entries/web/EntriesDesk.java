package rimebook.entries.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The door of this module on the desk. */
@Configuration(proxyBeanMethods = false)
class EntriesDesk {

	@Bean
	DeskEntry entriesEntry() {
		return new DeskEntry(20, "/desk/entries", "entries");
	}

}
