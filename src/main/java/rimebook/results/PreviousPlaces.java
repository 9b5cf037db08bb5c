package rimebook.results;

import java.util.HashMap;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;

/** The places of the version before, by entry. */
final class PreviousPlaces {

	private PreviousPlaces() {
	}

	static Map<String, Integer> of(@Nullable Standing before) {
		Map<String, Integer> places = new HashMap<>();
		if (before != null) {
			for (Standing.Row row : before.rows()) {
				Integer place = row.place();
				if (place != null) {
					places.put(row.entry(), place);
				}
			}
		}
		return places;
	}

}
