package rimebook.testsupport;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.springframework.test.context.ContextConfiguration;

/**
 * Runs a Spring test on PostgreSQL instead of H2, each application context on an empty
 * database of its own. Skipped where no Docker engine answers. The way to run one test on
 * both databases: <pre>
 * &#64;SpringBootTest
 * class EntriesIntegrationTests { ... }
 *
 * &#64;OnPostgres
 * class EntriesOnPostgresIntegrationTests extends EntriesIntegrationTests {}
 * </pre>
 */
@Documented
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@RequiresDocker
@ContextConfiguration(initializers = PostgresInitializer.class)
public @interface OnPostgres {

}
