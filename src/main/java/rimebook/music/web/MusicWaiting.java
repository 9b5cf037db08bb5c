package rimebook.music.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.UnderWay;
import rimebook.competition.UnderWay.DayEvent;
import rimebook.music.MusicDesk;
import rimebook.music.MusicPlays;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.shared.Actor;

/**
 * The music that is missing where music is kept at all, of segments of which none was
 * played yet: afterwards the desk and the stand say who has none.
 */
@Component
class MusicWaiting implements WaitingList {

	private final UnderWay underWay;

	private final MusicDesk desk;

	private final MusicPlays plays;

	MusicWaiting(UnderWay underWay, MusicDesk desk, MusicPlays plays) {
		this.underWay = underWay;
		this.desk = desk;
		this.plays = plays;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		List<DayEvent> held = this.underWay
			.events(CompetitionState.ENTRIES_OPEN, CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING)
			.toList();
		List<EventView> events = held.stream().map(DayEvent::event).toList();
		Set<SegmentId> begun = this.plays.begun(segments(events).toList());
		Map<SegmentId, MusicDesk.Count> counts = this.desk.counts(events);
		return held.stream()
			.collect(Collectors.groupingBy(DayEvent::competition, LinkedHashMap::new, Collectors.toList()))
			.entrySet()
			.stream()
			.map((competition) -> new Waiting(55, "music.waiting.missing",
					segments(competition.getValue().stream().map(DayEvent::event).toList())
						.filter((segment) -> !begun.contains(segment))
						.map((segment) -> counts.getOrDefault(segment, MusicDesk.Count.NONE))
						.filter(MusicDesk.Count::isKept)
						.mapToInt(MusicDesk.Count::missing)
						.sum(),
					new Waiting.Place(competition.getKey().name(), ""), "/desk/music"))
			.filter((line) -> line.count() > 0);
	}

	private static Stream<SegmentId> segments(List<EventView> events) {
		return events.stream().flatMap((event) -> event.segments().stream()).map(SegmentView::id);
	}

}
