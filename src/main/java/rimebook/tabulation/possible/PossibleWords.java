package rimebook.tabulation.possible;

import java.util.Objects;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.English;
import rimebook.tabulation.possible.PossiblePlaces.PlaceNeed.SegmentFinish;

/**
 * Says what is still possible in one sentence for coaches, teams and parents. Only what
 * is proved is said: where an end of a range is a bound, the sentence says "no better
 * than" or "no worse than".
 */
public final class PossibleWords {

	private final UnaryOperator<String> names;

	private final String goal;

	private PossibleWords(UnaryOperator<String> names, boolean inEvent) {
		this.names = names;
		this.goal = inEvent ? "the event" : "the segment";
	}

	/**
	 * Say which places of the segment a team can still reach.
	 * @param outlook of the team
	 * @param names turns an identifier into the name people know
	 * @return for example "Harbour Lights can still finish 1st to 4th in this segment."
	 */
	public static String inSegment(PossiblePlaces.Outlook outlook, UnaryOperator<String> names) {
		return range(names.apply(outlook.entry()), outlook.segment(), " in this segment.");
	}

	/**
	 * Say which places of the event a team can still reach.
	 * @param outlook of a team that gets a place in the event
	 * @param names turns an identifier into the name people know
	 * @return for example "Harbour Lights can still finish 1st to 4th in the event."
	 */
	public static String inEvent(PossiblePlaces.Outlook outlook, UnaryOperator<String> names) {
		return range(names.apply(outlook.entry()), Objects.requireNonNull(outlook.event()), " in the event.");
	}

	private static String range(String team, PossiblePlaces.PlaceRange range, String end) {
		String best = English.ordinal(range.best());
		String worst = English.ordinal(range.worst());
		if (range.isCertain()) {
			return team + " is certain of " + best + " place" + end;
		}
		if (range.isExact()) {
			boolean two = range.worst() == range.best() + 1;
			return team + " can still finish " + best + (two ? " or " : " to ") + worst + end;
		}
		if (range.bestExact()) {
			return team + " can still finish " + best + " and will be no worse than " + worst + end;
		}
		return team + (range.worstExact() ? " can still finish " + worst + " and will be no better than " + best
				: " will be no better than " + best + " and no worse than " + worst) + end;
	}

	/**
	 * Say what a team needs.
	 * @param need of a team still to skate
	 * @param inEvent whether the place is one of the event; else of the segment
	 * @param names turns an identifier into the name people know
	 * @return for example "To win the event, Pine needs 2nd place or better in this
	 * segment."
	 */
	public static String need(PossiblePlaces.PlaceNeed need, boolean inEvent, UnaryOperator<String> names) {
		return new PossibleWords(names, inEvent).need(need);
	}

	private String need(PossiblePlaces.PlaceNeed need) {
		String team = this.names.apply(need.entry());
		boolean toWin = need.place() == 1;
		String orBetter = English.ordinal(need.place()) + " place or better";
		if (need.isSafe()) {
			return team + (toWin ? " is certain to win " + this.goal + "."
					: " is certain of " + orBetter + " in " + this.goal + ".");
		}
		SegmentFinish possible = need.possible();
		if (possible == null) {
			return team + (toWin ? " can no longer win " + this.goal + "."
					: " can no longer finish " + English.ordinal(need.place()) + " or better in " + this.goal + ".");
		}
		String goal = toWin ? "To win " + this.goal + ", " : "For " + orBetter + " in " + this.goal + ", ";
		return goal + team + needed(need, possible) + assurance(need.certain(), possible) + ".";
	}

	private static String needed(PossiblePlaces.PlaceNeed need, SegmentFinish possible) {
		if (possible.equals(need.lowest())) {
			return need.possibleExact() ? " needs no certain place in this segment, but help from the others"
					: " may need no certain place in this segment";
		}
		return need.possibleExact() ? " needs " + orBetter(possible) + " in this segment"
				: " needs at the very least " + English.ordinal(possible.place()) + " place in this segment";
	}

	private static String assurance(@Nullable SegmentFinish certain, SegmentFinish possible) {
		if (certain == null) {
			return "; no place makes it certain";
		}
		if (certain.equals(possible)) {
			return "";
		}
		return (certain.place() == possible.place())
				? "; " + English.ordinal(certain.place()) + " place shared with another team may not be enough"
				: "; " + orBetter(certain) + " makes it certain";
	}

	private static String orBetter(SegmentFinish finish) {
		return English.ordinal(finish.place()) + " place" + (finish.shared() ? "" : " alone")
				+ ((finish.place() == 1) ? "" : " or better");
	}

}
