package rimebook.stand.web;

import java.util.List;

/** The skates that do not count, with what was sent and noted for them. */
record SetAsidePart(List<Skate> skates) implements LivePart {

	/**
	 * One skate that does not count.
	 *
	 * @param at when the team was called for it, in the rink's time
	 * @param lines what was sent and noted, empty for nothing
	 */
	record Skate(int number, String team, String at, List<String> lines) {
	}

}
