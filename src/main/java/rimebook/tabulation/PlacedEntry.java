package rimebook.tabulation;

import java.util.List;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * One team in the standing of a segment.
 *
 * @param entry identifier
 * @param status how the team came through
 * @param placing its place, if it has one
 * @param cards as given, in the panel's order; empty where ordinals were given
 * @param ordinals of each judge, hundredths, in the panel's order; empty for a team that
 * is not on the judges' cards
 * @param figures what the place was made of, or none without ordinals
 */
public record PlacedEntry(String entry, EntryStatus status, Placing placing, List<CardMarks> cards,
		List<Integer> ordinals, @Nullable Figures figures) {

	public PlacedEntry {
		cards = List.copyOf(cards);
		ordinals = List.copyOf(ordinals);
	}

	/**
	 * Return the place.
	 * @return from 1, or none for a team that is not placed
	 */
	public @Nullable Integer place() {
		return this.placing.place();
	}

	/**
	 * Return whether other teams have the same place.
	 * @return {@code true} for a shared place
	 */
	public boolean shared() {
		return this.placing.isShared();
	}

	/**
	 * Return what parted the team from its neighbours.
	 * @return no reason for a team without a place
	 */
	public Reason reason() {
		return this.placing.reason();
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
