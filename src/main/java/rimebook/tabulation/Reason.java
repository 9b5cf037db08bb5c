package rimebook.tabulation;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * Why a team has its place: what parted it from its neighbours.
 *
 * @param sharedWith the teams with exactly the same figures, by identifier
 * @param better against the next better place; none for the leader
 * @param worse against the next worse place; none for the last
 */
public record Reason(List<String> sharedWith, @Nullable Comparison better, @Nullable Comparison worse) {

	/** Reason of a team without a place: its status says it all. */
	public static final Reason NONE = new Reason(List.of(), null, null);

	public Reason {
		sharedWith = (sharedWith instanceof OthersOnPlace) ? sharedWith : List.copyOf(sharedWith);
	}

	/**
	 * The comparison that decided between a team and those on the neighbouring place:
	 * every criterion before this one was equal.
	 *
	 * @param rivals the teams on the neighbouring place, by identifier; more than one
	 * where they share it
	 * @param place the place they have
	 * @param criterion what decided
	 * @param own the team's value
	 * @param theirs the value of each rival
	 */
	public record Comparison(List<String> rivals, int place, Criterion criterion, int own, int theirs) {

		public Comparison {
			rivals = List.copyOf(rivals);
		}

	}

	/** The words of one judging method or of the combination. */
	public interface ReasonWords {

		/**
		 * Name the team's own figures.
		 * @param reason tells which of them are needed
		 * @return part of a sentence
		 */
		Sentence own(Reason reason);

		/**
		 * Say what the rivals had instead.
		 * @param comparison with the next better or next worse place
		 * @return part of a sentence, which follows their names and a comma
		 */
		Sentence rivals(Reason.Comparison comparison);

	}

}
