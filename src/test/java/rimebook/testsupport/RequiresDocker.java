package rimebook.testsupport;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Skips a test class or method where no Docker engine answers. The build then says at its
 * end how much was skipped; where an engine does answer, trouble with it fails the test.
 * <p>
 * A test that only wants PostgreSQL says {@link OnPostgres}, which includes this.
 */
@Documented
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target({ ElementType.TYPE, ElementType.METHOD })
@ExtendWith(DockerCondition.class)
public @interface RequiresDocker {

}
