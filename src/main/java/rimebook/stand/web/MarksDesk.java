package rimebook.stand.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

/** The doors of the running day on the desk. */
@Configuration(proxyBeanMethods = false)
class MarksDesk {

	@Bean
	DeskEntry standEntry() {
		return new DeskEntry(60, "/desk/stand", "stand");
	}

	@Bean
	DeskEntry technicalEntry() {
		return new DeskEntry(61, "/desk/technical", "technical");
	}

	@Bean
	DeskEntry keyingEntry() {
		return new DeskEntry(62, "/desk/keying", "keying");
	}

	@Bean
	DeskEntry sheetEntry() {
		return new DeskEntry(65, "/desk/sheet", "sheet");
	}

}
