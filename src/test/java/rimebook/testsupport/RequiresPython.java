package rimebook.testsupport;

import java.io.IOException;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Skips a test where there is no {@code python3}. The build then says at its end how much
 * was skipped.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ ElementType.TYPE, ElementType.METHOD })
@ExtendWith(RequiresPython.PythonCondition.class)
public @interface RequiresPython {

	/** Whether it answers. */
	final class PythonCondition implements ExecutionCondition {

		@Override
		public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
			try {
				int status = new ProcessBuilder("python3", "-c", "").start().waitFor();
				return (status == 0) ? ConditionEvaluationResult.enabled("python3 answers")
						: ConditionEvaluationResult.disabled("python3 does not work here");
			}
			catch (IOException ex) {
				return ConditionEvaluationResult.disabled("there is no python3 here");
			}
			catch (InterruptedException ex) {
				throw new IllegalStateException(ex);
			}
		}

	}

}
