package rimebook.tabulation.possible;

import java.util.List;

import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.TabulationException;

/**
 * The segments of the event that were skated before its last one.
 *
 * @param rules of the combination, with the factor of the last segment too
 * @param places of every team of the event in the earlier segments only, so one fewer
 * than there are factors; also of teams that did not reach the last segment
 */
public record EarlierSegments(CombinationRules rules, List<EntryPlaces> places) {

	/**
	 * Check the places.
	 * @throws TabulationException {@code uneven-places} or {@code duplicate-entry}
	 */
	public EarlierSegments {
		places = List.copyOf(places);
		int expected = rules.factors().size() - 1;
		for (EntryPlaces entry : places) {
			if (entry.places().size() != expected) {
				throw TabulationException.refused("uneven-places",
						"Entry '" + entry.entry() + "' has " + entry.places().size() + " places of earlier segments; "
								+ expected + " are expected, one for"
								+ " each factor but the last (empty where none was reached).");
			}
		}
		Names.eachOnce(places.stream().map(EntryPlaces::entry).toList());
	}

}
