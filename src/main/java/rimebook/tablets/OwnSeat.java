package rimebook.tablets;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.springframework.security.core.annotation.AuthenticationPrincipal;

/**
 * The identity of the seat whose tablet sent the request, for a parameter of type
 * {@link java.util.UUID}. There is no other way to name a seat in a request: a tablet
 * speaks for its own seat only.
 */
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@AuthenticationPrincipal(expression = "seat().seat()", errorOnInvalidType = true)
@interface OwnSeat {

}
