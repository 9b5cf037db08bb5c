package rimebook.tabulation;

import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

/**
 * Turns the reason for a place into one sentence for coaches, teams and parents: the
 * team's own figures, as far as they decided anything, and what parted it from the next
 * better and the next worse place.
 */
public final class WhySentence {

	private final UnaryOperator<String> names;

	private final Reason.ReasonWords words;

	private WhySentence(UnaryOperator<String> names, Reason.ReasonWords words) {
		this.names = names;
		this.words = words;
	}

	/**
	 * Explain a place in a segment.
	 * @param row the team's row
	 * @param names turns an identifier into the name people know
	 * @return for example "2nd: five of seven judges had them 2nd or better, total of
	 * those ordinals 9; behind A, whose majority was for 1st; ahead of C, who had the
	 * same majority with a total of 10."
	 */
	public static String of(PlacedEntry row, UnaryOperator<String> names) {
		Figures figures = row.figures();
		if (row.place() == null || figures == null) {
			return unplaced(row.status());
		}
		Reason.ReasonWords words = (figures instanceof Figures.MajorityFigures majority)
				? new MajorityWords(majority, row.ordinals().size())
				: new OneByOneWords((Figures.OneByOneFigures) figures);
		return new WhySentence(names, words).placed(row.place(), row.reason());
	}

	/**
	 * Explain a place in an event.
	 * @param row the team's row
	 * @param names turns an identifier into the name people know
	 * @return for example "1st: total 3.0 (4th in segment 1 counts 2.0, 1st in segment 2
	 * counts 1.0); ahead of B, with the same total but 2nd in the last segment."
	 */
	public static String of(EventStanding.EventRow row, UnaryOperator<String> names) {
		if (row.place() == null) {
			return unplaced(row.status());
		}
		return new WhySentence(names, new EventWords(row)).placed(row.place(), row.reason());
	}

	/**
	 * Explain a place by the words of another judging method.
	 * @param place from 1
	 * @param reason what parted the team from its neighbours
	 * @param words that method's
	 * @param names turns an identifier into the name people know
	 * @return one sentence
	 */
	public static String of(int place, Reason reason, Reason.ReasonWords words, UnaryOperator<String> names) {
		return new WhySentence(names, words).placed(place, reason);
	}

	/**
	 * Explain why there is no place.
	 * @param status how the team came through
	 * @return one sentence
	 */
	public static String unplaced(EntryStatus status) {
		return switch (status) {
			case SKATED -> "No place yet: nothing skated so far.";
			case NOT_FINISHED -> "No place: did not finish the programme.";
			case WITHDRAWN -> "No place: withdrawn.";
			case DISQUALIFIED -> "No place: disqualified.";
		};
	}

	private String placed(int place, Reason reason) {
		return English.ordinal(place) + shared(reason) + ": " + this.words.own(reason)
				+ neighbour("behind", reason.better()) + neighbour("ahead of", reason.worse()) + alone(reason) + ".";
	}

	private String shared(Reason reason) {
		return reason.sharedWith().isEmpty() ? ""
				: ", shared with " + English.list(reason.sharedWith(), this.names) + " on equal figures";
	}

	private String neighbour(String where, Reason.@Nullable Comparison comparison) {
		return (comparison == null) ? "" : "; " + where + " " + English.list(comparison.rivals(), this.names) + ", "
				+ this.words.rivals(comparison);
	}

	private static String alone(Reason reason) {
		boolean alone = reason.better() == null && reason.worse() == null && reason.sharedWith().isEmpty();
		return alone ? "; no other team is placed" : "";
	}

}
