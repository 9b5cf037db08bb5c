package rimebook.competition;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import rimebook.wording.Sentence;

/**
 * The life of a competition, in order. Entries may be opened again after they were
 * closed; from {@link #FINAL} and {@link #ARCHIVED} only an administrator leads back,
 * step by step and with a reason.
 */
public enum CompetitionState {

	/** Facts and events are being written down; nobody can enter yet. */
	PLANNED,

	/** Teams may be entered. */
	ENTRIES_OPEN,

	/** Only late entries, with a reason. */
	ENTRIES_CLOSED,

	/** The days on the ice. */
	RUNNING,

	/** Every result is official; nothing that could change one is taken any more. */
	FINAL,

	/** Put away; nothing changes any more. */
	ARCHIVED;

	/** The state as it stands in a sentence: "entries open". */
	public Sentence spoken() {
		return Sentence.of("competition.state." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
	}

	/** The same as it stands on the record. */
	public String inWords() {
		return spoken().english();
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
			case FINAL -> EnumSet.of(ARCHIVED);
			case ARCHIVED -> EnumSet.noneOf(CompetitionState.class);
		};
	}

	/** The state that an administrator can take it back to; empty before the end. */
	public Optional<CompetitionState> before() {
		return switch (this) {
			case ARCHIVED -> Optional.of(FINAL);
			case FINAL -> Optional.of(RUNNING);
			default -> Optional.empty();
		};
	}

	/** Tell whether facts, events and entries may still be changed. */
	public boolean isOpenToChange() {
		return compareTo(FINAL) < 0;
	}

}
