package rimebook.points;

import java.time.Instant;
import java.util.List;

/**
 * What one version of the called elements changed.
 *
 * @param sequence the version
 * @param by who sent it
 * @param at when, UTC
 * @param words one part of a sentence for each difference from the version before
 */
public record ListChange(int sequence, String by, Instant at, List<String> words) {

	public ListChange {
		words = List.copyOf(words);
	}

}
