package rimebook.tabulation;

import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

import rimebook.wording.Sentence;

/**
 * Two teams that have skated every segment and changed order in the event although they
 * did nothing: a team marked after them changed their places in the last segment.
 *
 * @param before the two as they stood, the one that was ahead first
 * @param after the same two, in the same order, as they stand now
 */
public record EventFlip(List<EventStanding.EventRow> before, List<EventStanding.EventRow> after) {

	public EventFlip {
		before = List.copyOf(before);
		after = List.copyOf(after);
	}

	/**
	 * Find the teams that changed order from one standing of an event to a later one.
	 * @param before the earlier standing
	 * @param after the later one
	 * @return one for each pair that is in another order, or shares a place only now or
	 * no longer; teams that had not skated every segment are not among them
	 */
	public static List<EventFlip> between(EventStanding before, EventStanding after) {
		return ChangedOrder.of(places(before), places(after))
			.stream()
			.map((pair) -> new EventFlip(rows(before, pair), rows(after, pair)))
			.toList();
	}

	private static SortedMap<String, Integer> places(EventStanding standing) {
		SortedMap<String, Integer> places = new TreeMap<>();
		standing.rows()
			.stream()
			.filter((row) -> row.complete() && row.place() != null)
			.forEach((row) -> places.put(row.entry(), Objects.requireNonNull(row.place())));
		return places;
	}

	private static List<EventStanding.EventRow> rows(EventStanding standing, ChangedOrder pair) {
		return List.of(standing.row(pair.first()).orElseThrow(), standing.row(pair.second()).orElseThrow());
	}

	/**
	 * Say it in one sentence.
	 * @param names turns an identifier into the name people know
	 * @return for example "B, now 1st, and A, now 2nd, changed order: A had total 2.5 (…)
	 * and has total 3.5 (…); B had total 3.0 (…) and has total 3.0 (…)."
	 */
	public Sentence words(UnaryOperator<String> names) {
		return Sentence.of("why.event-flip", now(1, names), now(0, names), totals(0, names), totals(1, names));
	}

	private Sentence now(int index, UnaryOperator<String> names) {
		EventStanding.EventRow row = this.after.get(index);
		return Sentence.of("why.event-flip.now", names.apply(row.entry()), Objects.requireNonNull(row.place()));
	}

	private Sentence totals(int index, UnaryOperator<String> names) {
		EventStanding.EventRow row = this.before.get(index);
		return Sentence.of("why.event-flip.totals", names.apply(row.entry()), new EventWords(row).own(Reason.NONE),
				new EventWords(this.after.get(index)).own(Reason.NONE));
	}

}
