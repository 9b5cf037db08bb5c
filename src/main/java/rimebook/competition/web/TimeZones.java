package rimebook.competition.web;

import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import rimebook.pages.Choice;

/** The time zones to choose from: places that people know, and UTC. */
final class TimeZones {

	private static final Set<String> PARTS = Set.of("Africa", "America", "Antarctica", "Arctic", "Asia", "Atlantic",
			"Australia", "Europe", "Indian", "Pacific");

	private static final List<String> PLACES = ZoneId.getAvailableZoneIds()
		.stream()
		.filter((id) -> id.contains("/") && PARTS.contains(id.substring(0, id.indexOf('/'))))
		.sorted()
		.toList();

	private TimeZones() {
	}

	static List<Choice> choices() {
		return Stream.concat(PLACES.stream(), Stream.of("UTC"))
			.map((id) -> new Choice(id, id.replace('_', ' ')))
			.toList();
	}

	/** The zone of this machine where it is one of the choices, else UTC. */
	static String usual() {
		String machine = ZoneId.systemDefault().getId();
		return PLACES.contains(machine) ? machine : "UTC";
	}

	/** Tell whether it is one of the choices. */
	static boolean knows(String id) {
		return id.equals("UTC") || PLACES.contains(id);
	}

}
