package rimebook.tabulation;

import java.util.List;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * One team in the standing of a segment.
 *
 * @param place from 1, or none for a team that is not placed
 * @param shared whether other teams have the same place
 * @param entry identifier
 * @param status how the team came through
 * @param cards as given, in the panel's order; empty where ordinals were given
 * @param ordinals of each judge, hundredths, in the panel's order; empty for a team that
 * is not on the judges' cards
 * @param figures what the place was made of, or none without ordinals
 * @param reason what parted the team from its neighbours
 */
public record PlacedEntry(@Nullable Integer place, boolean shared, String entry, EntryStatus status,
		List<CardMarks> cards, List<Integer> ordinals, @Nullable Figures figures, Reason reason) {

	public PlacedEntry {
		cards = List.copyOf(cards);
		ordinals = List.copyOf(ordinals);
	}

	/**
	 * Say in one sentence why the team has its place.
	 * @return the sentence, teams called by their identifiers
	 */
	public Sentence why() {
		return why(UnaryOperator.identity());
	}

	/**
	 * Say in one sentence why the team has its place.
	 * @param names turns an identifier into the name people know
	 * @return the sentence
	 */
	public Sentence why(UnaryOperator<String> names) {
		return WhySentence.of(this, names);
	}

}
