package rimebook.accounts;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;

import rimebook.pages.DeskEntry;

@Configuration(proxyBeanMethods = false)
class AccountsConfiguration {

	/** Each digest names its algorithm, so that a better one can take over later. */
	@Bean
	PasswordEncoder passwordEncoder() {
		return PasswordEncoderFactories.createDelegatingPasswordEncoder();
	}

	@Bean
	DeskEntry peopleDeskEntry() {
		return new DeskEntry(900, "/desk/people", "people");
	}

}
