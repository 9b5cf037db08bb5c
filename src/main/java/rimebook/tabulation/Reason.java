package rimebook.tabulation;

import java.util.List;

import org.jspecify.annotations.Nullable;

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

}
