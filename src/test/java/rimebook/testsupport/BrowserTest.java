package rimebook.testsupport;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test that drives Chromium; skipped where there is none. Its constructor, a set-up or
 * a test method asks for {@link Browsers} as a parameter and opens screens with them. At
 * the end of each test all of them are closed, and the test fails if a script failed on
 * one of them.
 */
@Documented
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@RequiresChromium
@ExtendWith(BrowserExtension.class)
public @interface BrowserTest {

}
