package rimebook.rosters;

import java.util.Collection;
import java.util.List;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.EventId;
import rimebook.entries.EntryId;
import rimebook.entries.PrintedNames;

/** Gives out the names of those who agreed, and nothing else of anybody. */
@Component
@Transactional(readOnly = true)
class AgreedNames implements PrintedNames {

	private final RosterPlaceRepository places;

	AgreedNames(RosterPlaceRepository places) {
		this.places = places;
	}

	@Override
	public List<String> of(EntryId entry) {
		return this.places.findByEntryIn(List.of(entry.value()))
			.stream()
			.map(RosterPlace::view)
			.filter((place) -> place.role() == PlaceRole.SKATES && place.skater().consent().isGiven())
			.map((place) -> place.skater().name())
			.toList();
	}

	@Override
	public int changes(Collection<EventId> events) {
		return Math.toIntExact(this.places.changes(events.stream().map(EventId::value).toList()));
	}

}
