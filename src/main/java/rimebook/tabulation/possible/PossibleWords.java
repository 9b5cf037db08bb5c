package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.possible.PossiblePlaces.PlaceNeed.SegmentFinish;
import rimebook.wording.Sentence;

/**
 * Says what is still possible in one sentence for coaches, teams and parents. Only what
 * is proved is said: where an end of a range is a bound, the sentence says "no better
 * than" or "no worse than".
 */
public final class PossibleWords {

	private PossibleWords() {
	}

	/**
	 * Say which places of the segment a team can still reach.
	 * @param outlook of the team
	 * @param names turns an identifier into the name people know
	 * @return for example "Harbour Lights can still finish 1st to 4th in this segment."
	 */
	public static Sentence inSegment(PossiblePlaces.Outlook outlook, UnaryOperator<String> names) {
		return range(names.apply(outlook.entry()), outlook.segment(), Sentence.of("possible.in-this-segment"));
	}

	/**
	 * Say which places of the event a team can still reach.
	 * @param outlook of a team that gets a place in the event
	 * @param names turns an identifier into the name people know
	 * @return for example "Harbour Lights can still finish 1st to 4th in the event."
	 */
	public static Sentence inEvent(PossiblePlaces.Outlook outlook, UnaryOperator<String> names) {
		return range(names.apply(outlook.entry()), Objects.requireNonNull(outlook.event()), in(true));
	}

	private static Sentence range(String team, PossiblePlaces.PlaceRange range, Sentence where) {
		return Sentence.of("possible." + form(range), team, range.best(), range.worst(), where);
	}

	private static String form(PossiblePlaces.PlaceRange range) {
		if (range.isCertain()) {
			return "certain";
		}
		if (range.isExact()) {
			return (range.worst() == range.best() + 1) ? "either" : "range";
		}
		if (range.bestExact()) {
			return "no-worse";
		}
		return range.worstExact() ? "no-better" : "within";
	}

	private static Sentence in(boolean event) {
		return Sentence.of(event ? "possible.in-the-event" : "possible.in-the-segment");
	}

	/**
	 * Say what a team needs.
	 * @param need of a team still to skate
	 * @param inEvent whether the place is one of the event; else of the segment
	 * @param names turns an identifier into the name people know
	 * @return for example "To win the event, Pine needs 2nd place or better in this
	 * segment."
	 */
	public static Sentence need(PossiblePlaces.PlaceNeed need, boolean inEvent, UnaryOperator<String> names) {
		String team = names.apply(need.entry());
		SegmentFinish possible = need.possible().finish();
		if (need.isSafe()) {
			return goal("possible.need.safe", need, inEvent, team);
		}
		if (possible == null) {
			return goal("possible.need.lost", need, inEvent, team);
		}
		return goal("possible.need", need, inEvent, team, needed(need, possible),
				assurance(need.certain().finish(), possible));
	}

	/** To win, or for a place: in the event, or in the segment. */
	private static Sentence goal(String key, PossiblePlaces.PlaceNeed need, boolean inEvent, Object... said) {
		List<Object> arguments = new ArrayList<>(List.of(need.place(), in(inEvent)));
		arguments.addAll(List.of(said));
		String what = (need.place() > 1) ? ".place" : inEvent ? ".win-event" : ".win-segment";
		return Sentence.of(key + what, arguments.toArray());
	}

	private static Sentence needed(PossiblePlaces.PlaceNeed need, SegmentFinish possible) {
		if (possible.equals(need.lowest())) {
			return Sentence.of(need.possible().exact() ? "possible.need.help" : "possible.need.maybe-none");
		}
		return need.possible().exact() ? Sentence.of("possible.need.needs", orBetter(possible))
				: Sentence.of("possible.need.at-least", possible.place());
	}

	private static Sentence assurance(@Nullable SegmentFinish certain, SegmentFinish possible) {
		if (certain == null) {
			return Sentence.of("possible.need.never-certain");
		}
		if (certain.equals(possible)) {
			return Sentence.NONE;
		}
		return (certain.place() == possible.place()) ? Sentence.of("possible.need.shared", certain.place())
				: Sentence.of("possible.need.certain-with", orBetter(certain));
	}

	private static Sentence orBetter(SegmentFinish finish) {
		String form = (finish.place() == 1) ? "possible.first" : "possible.or-better";
		return Sentence.of(finish.shared() ? form : form + ".alone", finish.place());
	}

}
