package rimebook.rehearsal;

import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Passwords for a day, easy to read out and to type. */
final class Passwords {

	/** None that is taken for another one. */
	private static final String SIGNS = "abcdefghjkmnpqrstuvwxyz23456789";

	private static final int GROUPS = 4;

	private static final int IN_GROUP = 4;

	private Passwords() {
	}

	/** Four groups of four signs: some 79 bits. */
	static String random(RandomGenerator random) {
		return IntStream.range(0, GROUPS).mapToObj((group) -> group(random)).collect(Collectors.joining("-"));
	}

	private static String group(RandomGenerator random) {
		return random.ints(IN_GROUP, 0, SIGNS.length())
			.mapToObj((at) -> SIGNS.substring(at, at + 1))
			.collect(Collectors.joining());
	}

}
