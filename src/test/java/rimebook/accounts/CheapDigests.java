package rimebook.accounts;

import java.util.Map;

import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * Lets every application of a test run make its digests of passwords and of codes of
 * seats with the service's algorithms, but with hardly any rounds: people sign in and
 * tablets take seats thousands of times in a run, and each time took up to a tenth of a
 * second of a core. The service's own rounds are checked in {@code PasswordEncodingTests}
 * and {@code CodeDigestsTests}. Only where the system property {@code rimebook.digests}
 * is {@code cheap}, as Maven's tests have it: benchmarks have these classes too.
 */
class CheapDigests implements ApplicationContextInitializer<ConfigurableApplicationContext> {

	/** The least that bcrypt has, as a power of two. */
	private static final int LEAST = 4;

	@Override
	public void initialize(ConfigurableApplicationContext context) {
		if (!"cheap".equals(System.getProperty("rimebook.digests"))) {
			return;
		}
		PasswordEncoder passwords = new DelegatingPasswordEncoder("bcrypt",
				Map.of("bcrypt", new BCryptPasswordEncoder(LEAST)));
		context.getBeanFactory().addBeanPostProcessor(new BeanPostProcessor() {
			@Override
			public Object postProcessAfterInitialization(Object bean, String name) {
				if (bean instanceof CodeDigests) {
					return new CheapCodes(context.getBeanFactory().getBean(CrewSigns.class));
				}
				return (bean instanceof PasswordEncoder) ? passwords : bean;
			}
		});
	}

	private static final class CheapCodes extends CodeDigests {

		private CheapCodes(CrewSigns signs) {
			super(signs);
		}

		@Override
		int rounds() {
			return 1;
		}

	}

}
