package rimebook.standby;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says a refused start from a copy in sentences instead of a trace. */
final class CopyRefusedAnalyzer extends AbstractFailureAnalyzer<CopyRefusedException> {

	@Override
	protected FailureAnalysis analyze(Throwable failure, CopyRefusedException refused) {
		return new FailureAnalysis(refused.getMessage(), refused.action(), refused);
	}

}
