package rimebook.competition;

import java.util.List;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** The ways of judging that there are here: each module that has one declares a bean. */
@Component
public class JudgingMethods {

	private final ObjectProvider<JudgingMethod> methods;

	private final RuleSets ruleSets;

	JudgingMethods(ObjectProvider<JudgingMethod> methods, RuleSets ruleSets) {
		this.methods = methods;
		this.ruleSets = ruleSets;
	}

	/** All of them, the usual first. */
	public List<JudgingMethod> all() {
		return this.methods.orderedStream().toList();
	}

	/**
	 * Refuse an event that nobody here could judge: of an unknown way, or by a rule set
	 * that is not known or has no factors for one of its segments.
	 */
	void check(DraftEvent event) {
		if (!all().contains(event.judging().method())) {
			throw unknown();
		}
		this.ruleSets.check(event);
	}

	static RuleViolationException unknown() {
		return new RuleViolationException("method-unknown", "method", Sentence.of("competition.method-unknown"));
	}

}
