package rimebook.testsupport;

import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

class PostgresInitializer implements ApplicationContextInitializer<ConfigurableApplicationContext> {

	@Override
	public void initialize(ConfigurableApplicationContext context) {
		TestPropertyValues.of(PostgresDatabase.create().asProperties())
			// A data slice would otherwise put an embedded database in its place.
			.and("spring.test.database.replace=none")
			// Every context stays cached; full pools of all of them would not fit.
			.and("spring.datasource.hikari.minimum-idle=1")
			.applyTo(context);
	}

}
