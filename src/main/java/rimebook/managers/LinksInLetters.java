package rimebook.managers;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.CarriedTeamLinks;
import rimebook.accounts.LinkStanding;
import rimebook.accounts.TeamLinks;
import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.letters.PersonalLinks;
import rimebook.pages.HouseAddress;
import rimebook.pages.HouseAddresses;
import rimebook.shared.Actor;

/** The links that letters take along are those of the teams' managers. */
@Component
@Transactional(readOnly = true)
class LinksInLetters implements PersonalLinks {

	private final TeamsLinks links;

	private final TeamLinks given;

	private final CarriedTeamLinks carried;

	private final HouseAddresses house;

	LinksInLetters(TeamsLinks links, TeamLinks given, CarriedTeamLinks carried, HouseAddresses house) {
		this.links = links;
		this.given = given;
		this.carried = carried;
		this.house = house;
	}

	@Override
	public String base() {
		return address().base();
	}

	/** Letters are read far away. */
	private HouseAddress address() {
		return this.house.farAway();
	}

	@Override
	public void require(CompetitionId competition) {
		this.links.end(competition);
	}

	@Override
	public Set<EntryId> open(CompetitionId competition) {
		return this.given.of(competition.value())
			.stream()
			.filter((link) -> link.state().standing() == LinkStanding.GOOD)
			.map((link) -> new EntryId(link.pass().entry()))
			.collect(Collectors.toSet());
	}

	@Override
	@Transactional
	public String setOut(Errand errand) {
		TeamLinks.GiveLink order = this.links.orderFor(errand.competition(), errand.team());
		return address().manager(
				this.carried.setOut(order, new CarriedTeamLinks.Errand(errand.letter(), errand.by(), errand.at())));
	}

	@Override
	@Transactional
	public void arrived(UUID letter) {
		this.carried.arrived(letter);
	}

	@Override
	@Transactional
	public void lost(UUID letter) {
		this.carried.lost(letter);
	}

	@Override
	@Transactional
	public int give(CompetitionId competition, Collection<EntryId> teams, Actor actor) {
		require(competition);
		List<TeamsLinks.TeamRow> without = this.links.of(competition)
			.stream()
			.filter((row) -> teams.contains(row.entry().id()) && row.takesPart() && !row.isShown())
			.toList();
		without.forEach((row) -> this.links.give(competition, row.entry().id(), actor));
		return without.size();
	}

	@Override
	public Map<EntryId, String> shown(CompetitionId competition) {
		return this.links.of(competition)
			.stream()
			.filter(TeamsLinks.TeamRow::isShown)
			.collect(Collectors.toMap((row) -> row.entry().id(), (row) -> address()
				.manager(Objects.requireNonNull(Objects.requireNonNull(row.link()).state().token()))));
	}

	@Override
	public Fate fate(CompetitionId competition, EntryId team, UUID letter) {
		if (this.carried.of(competition.value()).contains(new CarriedTeamLinks.Carrier(letter, team.value()))) {
			return Fate.UNDER_WAY;
		}
		return this.given.of(competition.value())
			.stream()
			.filter((link) -> letter.equals(link.carriedBy()))
			.findFirst()
			.map(LinksInLetters::fate)
			.orElse(Fate.VOID);
	}

	private static Fate fate(TeamLinks.LinkView link) {
		return switch (link.state().standing()) {
			case GOOD -> (link.state().openedAt() != null) ? Fate.OPENED : Fate.GOOD;
			case REVOKED -> Fate.SHUT;
			case EXPIRED -> Fate.EXPIRED;
			case UNKNOWN -> Fate.VOID;
		};
	}

}
