package rimebook.results;

import java.util.List;

import org.springframework.stereotype.Service;

import rimebook.competition.EventView;
import rimebook.wording.Sentence;

/** Names the rule set of an event on what is printed before there is a standing. */
@Service
public class RuleSetNames {

	private final List<MethodStandings> methods;

	RuleSetNames(List<MethodStandings> methods) {
		this.methods = methods;
	}

	/** The rule set by which the event is judged, as its standing names it. */
	public Sentence of(EventView event) {
		return this.methods.stream()
			.filter((method) -> method.isFor(event))
			.findFirst()
			.map((method) -> method.ruleSet(event))
			.orElse(Sentence.NONE);
	}

}
