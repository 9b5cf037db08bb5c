package rimebook.panels.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.pages.Choice;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatPlace;
import rimebook.panels.SeatView;

/**
 * Takes the officials of one event's panel over into another's. Nothing is written: they
 * are filled in where a seat is empty, to be looked at and then seated.
 */
@Component
class PanelCopy {

	private final Panels panels;

	private final Competitions competitions;

	PanelCopy(Panels panels, Competitions competitions) {
		this.panels = panels;
		this.competitions = competitions;
	}

	/** The events in whose panels somebody sits, those of the same competition first. */
	List<Choice> offered(EventView into) {
		Set<EventId> taken = this.panels.taken();
		return this.competitions.all()
			.stream()
			.sorted((one, other) -> Boolean.compare(isOf(other, into), isOf(one, into)))
			.flatMap((competition) -> offered(competition, into, taken))
			.toList();
	}

	private static boolean isOf(CompetitionView competition, EventView event) {
		return competition.id().equals(event.competition());
	}

	private Stream<Choice> offered(CompetitionView competition, EventView into, Set<EventId> taken) {
		return this.competitions.events(competition.id())
			.stream()
			.filter((event) -> !event.id().equals(into.id()) && taken.contains(event.id()))
			.map((event) -> Choice.of(event.id(),
					isOf(competition, into) ? event.name() : event.name() + ", " + competition.name()));
	}

	/** Who sits in that panel, filled in at the empty seats of this one. */
	PanelForm of(EventId from, EventId into) {
		Map<SeatPlace, OfficialView> there = sitting(from);
		Map<SeatPlace, OfficialView> here = sitting(into);
		Map<String, String> chosen = new HashMap<>();
		this.panels.places(into)
			.stream()
			.filter((place) -> !here.containsKey(place))
			.forEach((place) -> Optional.ofNullable(there.get(place))
				.ifPresent((official) -> chosen.put(PanelForm.value(place), official.id().toString())));
		return new PanelForm(chosen, Map.of());
	}

	/** What was taken over, and whom this panel has no empty seat for. */
	Copied inWords(EventId from, PanelForm form) {
		Map<SeatPlace, OfficialView> there = sitting(from);
		String without = there.entrySet()
			.stream()
			.filter((seat) -> form.chosen(PanelForm.value(seat.getKey())).isEmpty())
			.map((seat) -> seat.getKey().label() + " " + seat.getValue().name())
			.sorted()
			.collect(Collectors.joining(", "));
		return new Copied(this.competitions.event(from).name(), form.number(), without);
	}

	private Map<SeatPlace, OfficialView> sitting(EventId event) {
		Map<SeatPlace, OfficialView> sitting = new HashMap<>();
		for (SeatView seat : this.panels.ofEvent(event).seats()) {
			Optional.ofNullable(seat.official())
				.ifPresent((official) -> sitting.put(new SeatPlace(seat.kind(), seat.number()), official));
		}
		return sitting;
	}

	/**
	 * What was filled in from another panel.
	 *
	 * @param event the name of the event whose panel it is
	 * @param officials how many were filled in
	 * @param without who sits there and has no empty seat here, empty for nobody
	 */
	record Copied(String event, int officials, String without) {
	}

}
