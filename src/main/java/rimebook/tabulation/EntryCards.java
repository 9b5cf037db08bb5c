package rimebook.tabulation;

import java.util.List;

/**
 * What tabulation needs to know of one team in one segment.
 *
 * @param entry identifier, unique in the segment; also decides the order in which teams
 * sharing a place are listed
 * @param status how the team came through
 * @param cards one of each judge, in the panel's order. A team that skated must have
 * them, a disqualified one may, all others have none
 */
public record EntryCards(String entry, EntryStatus status, List<CardMarks> cards) {

	/**
	 * Check the entry by itself.
	 * @throws TabulationException {@code entry-missing}, {@code no-judges} or
	 * {@code cards-without-performance}
	 */
	public EntryCards {
		cards = List.copyOf(cards);
		if (entry.isBlank()) {
			throw TabulationException.blankEntry();
		}
		if (status == EntryStatus.SKATED && cards.isEmpty()) {
			throw TabulationException.noJudges(entry);
		}
		if (!cards.isEmpty() && status != EntryStatus.SKATED && status != EntryStatus.DISQUALIFIED) {
			throw TabulationException.cardsWithoutPerformance(entry, status);
		}
	}

	/**
	 * Return a team that skated.
	 * @param entry identifier
	 * @param cards one of each judge, in the panel's order
	 * @return the entry
	 */
	public static EntryCards skated(String entry, List<CardMarks> cards) {
		return new EntryCards(entry, EntryStatus.SKATED, cards);
	}

	/**
	 * Return a team without marks.
	 * @param entry identifier
	 * @param status why it has none
	 * @return the entry
	 */
	public static EntryCards without(String entry, EntryStatus status) {
		return new EntryCards(entry, status, List.of());
	}

}
