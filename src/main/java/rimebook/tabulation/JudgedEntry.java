package rimebook.tabulation;

import java.util.List;

/** A team with its ordinals in hundredths; none where it is not on the judges' cards. */
record JudgedEntry(String entry, EntryStatus status, List<CardMarks> cards, List<Integer> ordinals) {

	static JudgedEntry of(EntryCards entry, List<Integer> ordinals) {
		return new JudgedEntry(entry.entry(), entry.status(), entry.cards(), ordinals);
	}

	static JudgedEntry of(EntryOrdinals entry) {
		return new JudgedEntry(entry.entry(), EntryStatus.SKATED, List.of(),
				entry.ordinals().stream().map((ordinal) -> ordinal * Hundredths.ONE).toList());
	}

	boolean isOnTheCards() {
		return !this.ordinals.isEmpty();
	}

}
