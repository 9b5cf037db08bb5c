package rimebook.panels;

import java.util.List;

/**
 * That somebody may sit in judgement although they are bound.
 *
 * @param reason why, empty where nothing binds them
 * @param grounds the bonds that were known when it was given
 */
record Allowance(String reason, List<String> grounds) {

	static final Allowance NONE = new Allowance("", List.of());

	Allowance {
		grounds = List.copyOf(grounds);
	}

}
