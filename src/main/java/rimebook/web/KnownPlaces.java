package rimebook.web;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * From where each account was signed in to since the start of this node, the newest few
 * thousand. Whoever guesses at an account from elsewhere slows down strangers to it, not
 * the person who sits where they always sit.
 */
class KnownPlaces {

	private static final int MOST_KEPT = 5_000;

	private final Set<String> places = Collections
		.synchronizedSet(Collections.newSetFromMap(new LinkedHashMap<>(16, 0.75f, false) {

			private static final long serialVersionUID = 1L;

			@Override
			protected boolean removeEldestEntry(Map.Entry<String, Boolean> eldest) {
				return size() > MOST_KEPT;
			}

		}));

	void remember(String account, String network) {
		this.places.add(network + " " + account);
	}

	boolean know(String account, String network) {
		return this.places.contains(network + " " + account);
	}

}
