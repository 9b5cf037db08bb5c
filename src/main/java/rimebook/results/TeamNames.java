package rimebook.results;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

import rimebook.entries.EntryView;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.EntryName;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/** What the teams of an event are called, by entry. */
final class TeamNames {

	private TeamNames() {
	}

	static Teams of(List<EntryView> entries) {
		return new Teams(entries.stream()
			.collect(Collectors.toMap((entry) -> entry.id().toString(),
					(entry) -> new Named(entry.team().name(), entry.team().club().name()))));
	}

	/** The teams of an event; whoever has a place in it is among them. */
	record Teams(Map<String, Named> byEntry) {

		Named of(String entry) {
			return Objects.requireNonNull(this.byEntry.get(entry));
		}

	}

	record Named(String team, String club) {
	}

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
			Map<String, String> names = teams.entrySet()
				.stream()
				.collect(Collectors.toMap(Map.Entry::getKey, (team) -> team.getValue().team()));
			return new RuleViolationException(refused.code(),
					Sentence.of("results.cannot-be-tabulated", EntryName.named(refused.sentence(), names)));
		}

	}

}
