package rimebook.testsupport;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.springframework.boot.test.context.SpringBootTest;

/**
 * The whole application on a random port, with a database of its own in memory; one
 * context is shared by all tests that say no more than this. Together with
 * {@link OnPostgres} it runs on PostgreSQL.
 */
@Documented
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = "spring.datasource.url=jdbc:h2:mem:whole;LOCK_TIMEOUT=10000;DB_CLOSE_DELAY=-1")
public @interface WholeApplication {

}
