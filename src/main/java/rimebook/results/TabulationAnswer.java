package rimebook.results;

import java.util.Map;

import rimebook.shared.RuleViolationException;
import rimebook.tabulation.TabulationException;

/**
 * Turns what cannot be tabulated into a refusal for people, with the teams' names in
 * place of the identities that the tabulation knows.
 */
final class TabulationAnswer {

	private TabulationAnswer() {
	}

	/**
	 * The refusal.
	 * @param teams what the teams are called, by entry
	 */
	static RuleViolationException of(TabulationException refused, Map<String, TeamNames.Named> teams) {
		String sentence = String.valueOf(refused.getMessage());
		for (Map.Entry<String, TeamNames.Named> team : teams.entrySet()) {
			sentence = sentence.replace("entry '" + team.getKey() + "'", team.getValue().team())
				.replace("Entry '" + team.getKey() + "'", team.getValue().team());
		}
		return new RuleViolationException(refused.code(), "The standing cannot be made so: " + sentence);
	}

}
