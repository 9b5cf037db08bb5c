package rimebook.testsupport;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

class DockerCondition implements ExecutionCondition {

	private final DockerEngine engine;

	DockerCondition() {
		this(DockerEngine.ofThisMachine());
	}

	DockerCondition(DockerEngine engine) {
		this.engine = engine;
	}

	@Override
	public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
		return this.engine.answers() ? ConditionEvaluationResult.enabled("a Docker engine answers")
				: ConditionEvaluationResult.disabled("no Docker engine answers at " + this.engine);
	}

}
