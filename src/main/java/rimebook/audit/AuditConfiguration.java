package rimebook.audit;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.pages.DeskEntry;

@Configuration(proxyBeanMethods = false)
class AuditConfiguration {

	@Bean
	DeskEntry recordDeskEntry() {
		return new DeskEntry(800, "/desk/record", "record");
	}

}
