package rimebook.tabulation.possible;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.EntryName;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * A segment in which teams are still to skate.
 *
 * @param rules with which the standing was made
 * @param standing of the teams known so far; where it was made from cards, only such
 * positions count as possible for which there is a card
 * @param toSkate identifiers of the teams still to skate, one at least
 * @param earlier the segments before, or none where the event does not end with this
 * segment
 */
public record SegmentUnderWay(PlacementRules rules, SegmentStanding standing, List<String> toSkate,
		@Nullable EarlierSegments earlier) {

	/** The most teams that are looked at. */
	public static final int MOST_TEAMS = 200;

	/**
	 * Check that teams and judges fit together.
	 * @throws TabulationException {@code nobody-to-skate}, {@code entry-missing},
	 * {@code duplicate-entry}: a team is listed twice or already in the standing;
	 * {@code too-many-teams} or {@code earlier-places-missing}
	 */
	public SegmentUnderWay {
		toSkate = List.copyOf(toSkate);
		if (toSkate.isEmpty()) {
			throw TabulationException.refused("nobody-to-skate", Sentence.of("tabulation.nobody-to-skate"));
		}
		Names.eachOnce(teams(standing, toSkate));
		if (standing.rows().size() + toSkate.size() > MOST_TEAMS) {
			throw TabulationException.refused("too-many-teams", Sentence.of("tabulation.too-many-teams", MOST_TEAMS));
		}
		if (earlier != null && earlier.rules().factors().size() > 1) {
			checkEarlier(teams(standing, toSkate), earlier);
		}
	}

	private static List<String> teams(SegmentStanding standing, List<String> toSkate) {
		return Stream.concat(standing.rows().stream().map(PlacedEntry::entry), toSkate.stream()).toList();
	}

	private static void checkEarlier(List<String> teams, EarlierSegments earlier) {
		Set<String> known = earlier.places().stream().map(EntryPlaces::entry).collect(Collectors.toSet());
		for (String team : teams) {
			if (!known.contains(team)) {
				throw TabulationException.refused("earlier-places-missing",
						Sentence.of("tabulation.earlier-places-missing", EntryName.first(team)));
			}
		}
	}

	/**
	 * Return a segment by itself.
	 * @param rules with which the standing was made
	 * @param standing of the teams known so far
	 * @param toSkate identifiers of the teams still to skate
	 * @return the segment
	 */
	public static SegmentUnderWay of(PlacementRules rules, SegmentStanding standing, List<String> toSkate) {
		return new SegmentUnderWay(rules, standing, toSkate, null);
	}

	/**
	 * Return this segment as the last one of an event.
	 * @param before the segments skated before
	 * @return a changed copy
	 */
	public SegmentUnderWay after(EarlierSegments before) {
		return new SegmentUnderWay(this.rules, this.standing, this.toSkate, before);
	}

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
					throw TabulationException.refused("uneven-places", Sentence.of("tabulation.uneven-earlier-places",
							EntryName.first(entry.entry()), entry.places().size(), expected));
				}
			}
			Names.eachOnce(places.stream().map(EntryPlaces::entry).toList());
		}

	}

}
