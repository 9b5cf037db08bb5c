package rimebook.results;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

/**
 * What a row of a segment says of its team, however it was judged: its names, its
 * starting number and its place in the version before.
 */
record StartedTeams(TeamNames.Teams teams, Map<String, Integer> numbers, Map<String, Integer> places) {

	static StartedTeams of(MethodStandings.SegmentFacts facts) {
		Map<String, Integer> numbers = new HashMap<>();
		facts.field()
			.closed()
			.forEach((performance) -> numbers.put(performance.entry().toString(), performance.startNumber()));
		return new StartedTeams(TeamNames.of(facts.entries()), numbers, PreviousPlaces.of(facts.before()));
	}

	TeamNames.Named of(String entry) {
		return this.teams.of(entry);
	}

	int number(String entry) {
		return Objects.requireNonNull(this.numbers.get(entry));
	}

	@Nullable Integer previousPlace(String entry) {
		return this.places.get(entry);
	}

}
