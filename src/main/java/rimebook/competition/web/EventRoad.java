package rimebook.competition.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.WebInvocationPrivilegeEvaluator;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;

/**
 * The way of an event through the house in the order of the day, as far as the viewer may
 * walk it.
 */
@Component
class EventRoad {

	private final WebInvocationPrivilegeEvaluator doors;

	EventRoad(WebInvocationPrivilegeEvaluator doors) {
		this.doors = doors;
	}

	List<RoadStretch> of(EventView event, Authentication viewer) {
		List<RoadStretch> road = new ArrayList<>();
		road.add(stretch("", event.id(), viewer, "entries", "panel"));
		for (SegmentView segment : event.segments()) {
			road.add(stretch(segment.name(), segment.id(), viewer, doors(event)));
		}
		return road.stream().filter((stretch) -> !stretch.stops().isEmpty()).toList();
	}

	private static String[] doors(EventView event) {
		return event.hasTechnicalPanel()
				? new String[] { "draw", "music/desk", "stand", "keying", "results", "protests" }
				: new String[] { "draw", "music/desk", "stand", "results", "protests" };
	}

	private RoadStretch stretch(String segment, Object id, Authentication viewer, String... doors) {
		return new RoadStretch(segment, Stream.of(doors)
			.map((door) -> new RoadStop("competition.road." + door.replace('/', '-'), "/desk/" + door + "/" + id))
			.filter((stop) -> this.doors.isAllowed("", stop.path(), "GET", viewer))
			.toList());
	}

}
