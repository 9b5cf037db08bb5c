package rimebook.live;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.letters.LetterFacts;
import rimebook.letters.LetterKind;
import rimebook.pages.HouseAddresses;

/** Letters with a link tell where the public page of a team is. */
@Component
@Transactional(readOnly = true)
class PagesInLetters implements LetterFacts {

	private final PublicAddress address;

	private final HouseAddresses house;

	private final Competitions competitions;

	PagesInLetters(PublicAddress address, HouseAddresses house, Competitions competitions) {
		this.address = address;
		this.house = house;
		this.competitions = competitions;
	}

	@Override
	public Map<EntryId, List<LetterFacts.Line>> of(LetterKind kind, CompetitionId id, Collection<EntryView> teams) {
		Map<EntryId, List<LetterFacts.Line>> told = new HashMap<>();
		if (kind == LetterKind.LINK) {
			String slug = this.competitions.competition(id).slug();
			String base = this.address.base().isEmpty() ? this.house.all().get(0).base() : this.address.base();
			teams.forEach((team) -> {
				LetterFacts.Line page = (language) -> base + "/follow/" + slug + "/team/" + team.id() + "?lang="
						+ language.getLanguage();
				told.put(team.id(), List.of(page));
			});
		}
		return told;
	}

}
