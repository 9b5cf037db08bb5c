package rimebook.competition;

import java.util.EnumSet;
import java.util.Set;

/**
 * The life of a competition, in order. {@link #FINAL} may fall back to {@link #RUNNING}
 * when a result has to be corrected, and entries may be opened again after they were
 * closed; no other step leads back.
 */
public enum CompetitionState {

	/** Facts and events are being written down; nobody can enter yet. */
	PLANNED("planned"),

	/** Teams may be entered. */
	ENTRIES_OPEN("entries open"),

	/** Only late entries, with a reason. */
	ENTRIES_CLOSED("entries closed"),

	/** The days on the ice. */
	RUNNING("running"),

	/** Every result is official. */
	FINAL("final"),

	/** Put away; nothing changes any more. */
	ARCHIVED("archived");

	private final String inWords;

	CompetitionState(String inWords) {
		this.inWords = inWords;
	}

	/** The state as it stands in a sentence and on the record: "entries open". */
	public String inWords() {
		return this.inWords;
	}

	/** Tell whether the next state may follow this one. */
	public boolean canBecome(CompetitionState next) {
		return nextStates().contains(next);
	}

	/** The states that may follow, the usual one first; empty for {@link #ARCHIVED}. */
	public Set<CompetitionState> nextStates() {
		return switch (this) {
			case PLANNED -> EnumSet.of(ENTRIES_OPEN);
			case ENTRIES_OPEN -> EnumSet.of(ENTRIES_CLOSED);
			case ENTRIES_CLOSED -> EnumSet.of(ENTRIES_OPEN, RUNNING);
			case RUNNING -> EnumSet.of(FINAL);
			case FINAL -> EnumSet.of(RUNNING, ARCHIVED);
			case ARCHIVED -> EnumSet.noneOf(CompetitionState.class);
		};
	}

	/** Tell whether facts, events and entries may still be changed. */
	public boolean isOpenToChange() {
		return compareTo(FINAL) < 0;
	}

}
