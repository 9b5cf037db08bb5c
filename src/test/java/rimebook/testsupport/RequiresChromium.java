package rimebook.testsupport;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Skips a test class or method where there is no Chromium to drive. The browser is
 * {@link Chromium#executable()}: <pre>
 * &#64;RequiresChromium
 * class StandingPageIntegrationTests {
 *     // browsers.chromium().launch(new LaunchOptions().setExecutablePath(Chromium.executable()))
 * }
 * </pre>
 */
@Documented
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target({ ElementType.TYPE, ElementType.METHOD })
@ExtendWith(ChromiumCondition.class)
public @interface RequiresChromium {

}
