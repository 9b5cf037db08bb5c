package rimebook.tabulation.possible;

import java.util.List;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.possible.PossiblePlaces.PlaceNeed.SegmentFinish;

/**
 * Works out what one team still to skate needs, from the places in the event that each
 * finish in the segment leaves it.
 */
final class Needs {

	private final String entry;

	private final Extremes bounds;

	private final Extremes reached;

	private final int[] finishes;

	private final int teams;

	/**
	 * Prepare.
	 * @param bounds of the place in the event, by {@link Finish}
	 * @param reached places that came up, by {@link Finish}
	 * @param finishes best first
	 * @param teams how many there are in the segment
	 */
	Needs(String entry, Extremes bounds, Extremes reached, int[] finishes, int teams) {
		this.entry = entry;
		this.bounds = bounds;
		this.reached = reached;
		this.finishes = finishes;
		this.teams = teams;
	}

	List<PossiblePlaces.PlaceNeed> upTo(int places) {
		return IntStream.rangeClosed(1, places).mapToObj(this::of).toList();
	}

	private PossiblePlaces.PlaceNeed of(int place) {
		int certain = 0;
		while (certain < this.finishes.length && this.bounds.worst(this.finishes[certain]) <= place) {
			certain++;
		}
		boolean certainExact = certain == this.finishes.length || this.reached.worst(this.finishes[certain]) > place;
		int possible = this.finishes.length;
		while (possible > 0 && this.bounds.best(this.finishes[possible - 1]) > place) {
			possible--;
		}
		boolean possibleExact = possible == 0 || this.reached.best(this.finishes[possible - 1]) <= place;
		return new PossiblePlaces.PlaceNeed(this.entry, place,
				new PossiblePlaces.PlaceNeed.FinishBound(finish(certain), certainExact),
				new PossiblePlaces.PlaceNeed.FinishBound(finish(possible), possibleExact),
				finishOf(this.finishes[this.finishes.length - 1]));
	}

	/** Return the last of so many finishes. */
	private @Nullable SegmentFinish finish(int count) {
		return (count == 0) ? null : finishOf(this.finishes[count - 1]);
	}

	/**
	 * With the last place of all there is nobody to share it with, so nothing to tell.
	 */
	private SegmentFinish finishOf(int finish) {
		int place = Finish.place(finish);
		return new SegmentFinish(place, Finish.isShared(finish) || place == this.teams);
	}

}
