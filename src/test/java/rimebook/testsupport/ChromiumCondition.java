package rimebook.testsupport;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

class ChromiumCondition implements ExecutionCondition {

	@Override
	public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
		return Chromium.isInstalled() ? ConditionEvaluationResult.enabled("Chromium is installed")
				: ConditionEvaluationResult.disabled("no Chromium at " + Chromium.executable()
						+ " (install it, or name another with -Drimebook.chromium)");
	}

}
