package rimebook.live;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What the description of the public data says of an address. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@interface Answers {

	/** What is answered, in one sentence. */
	String value();

	/** The body; left out for a table. */
	Class<?> body() default Void.class;

}
