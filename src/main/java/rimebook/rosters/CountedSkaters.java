package rimebook.rosters;

import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.entries.EntryId;
import rimebook.entries.SkaterCounts;

/** Gives out how many skate, and nothing of who they are. */
@Component
@Transactional(readOnly = true)
class CountedSkaters implements SkaterCounts {

	private final RosterPlaceRepository places;

	CountedSkaters(RosterPlaceRepository places) {
		this.places = places;
	}

	@Override
	public Map<EntryId, Integer> of(Collection<EntryId> entries) {
		return this.places.counted(entries.stream().map(EntryId::value).toList(), PlaceRole.SKATES)
			.stream()
			.collect(Collectors.toMap((count) -> new EntryId(count.getWhose()),
					(count) -> Math.toIntExact(count.getPeople())));
	}

}
