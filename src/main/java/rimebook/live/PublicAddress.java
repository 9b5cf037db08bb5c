package rimebook.live;

import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/**
 * Where the public reaches this house, for addresses that are read elsewhere and so have
 * to be whole. Taken from what is set for documents, never from what a request names.
 */
@Component
class PublicAddress {

	private final String base;

	PublicAddress(Environment environment) {
		this.base = environment.getProperty("rimebook.documents.address", "").strip().replaceFirst("/+$", "");
	}

	/** Such as {@code https://results.example}; empty where none is set. */
	String base() {
		return this.base;
	}

}
