package rimebook.tabulation;

import java.util.Locale;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

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
	public static Sentence of(PlacedEntry row, UnaryOperator<String> names) {
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
	public static Sentence of(EventStanding.EventRow row, UnaryOperator<String> names) {
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
	public static Sentence of(int place, Reason reason, Reason.ReasonWords words, UnaryOperator<String> names) {
		return new WhySentence(names, words).placed(place, reason);
	}

	/**
	 * Explain why there is no place.
	 * @param status how the team came through
	 * @return one sentence
	 */
	public static Sentence unplaced(EntryStatus status) {
		return Sentence.of("why.unplaced." + status.name().toLowerCase(Locale.ROOT).replace('_', '-'));
	}

	private Sentence placed(int place, Reason reason) {
		return Sentence.of("why.placed", place, shared(reason), this.words.own(reason),
				neighbour("why.behind", reason.better()), neighbour("why.ahead", reason.worse()), alone(reason));
	}

	private Sentence shared(Reason reason) {
		return reason.sharedWith().isEmpty() ? Sentence.NONE
				: Sentence.of("why.shared", Phrases.list(reason.sharedWith(), this.names));
	}

	private Sentence neighbour(String where, Reason.@Nullable Comparison comparison) {
		return (comparison == null) ? Sentence.NONE
				: Sentence.of(where, Phrases.list(comparison.rivals(), this.names), this.words.rivals(comparison));
	}

	private static Sentence alone(Reason reason) {
		boolean alone = reason.better() == null && reason.worse() == null && reason.sharedWith().isEmpty();
		return alone ? Sentence.of("why.alone") : Sentence.NONE;
	}

}
