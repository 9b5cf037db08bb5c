package rimebook.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;

/**
 * From where each account was signed in to since the start of this node, a few thousand
 * places, those longest that are used most. Whoever guesses at an account from elsewhere
 * slows down strangers to it, not the person who sits where they always sit.
 */
class KnownPlaces {

	private static final int MOST_KEPT = 5_000;

	private final Cache<String, Boolean> places = Caffeine.newBuilder()
		.maximumSize(MOST_KEPT)
		.executor(Runnable::run)
		.build();

	void remember(String account, String network) {
		this.places.put(place(account, network), true);
	}

	boolean know(String account, String network) {
		return this.places.getIfPresent(place(account, network)) != null;
	}

	private static String place(String account, String network) {
		return network + " " + account;
	}

}
