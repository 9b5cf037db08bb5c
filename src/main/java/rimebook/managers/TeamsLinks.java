package rimebook.managers;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.CarriedTeamLinks;
import rimebook.accounts.LinkStanding;
import rimebook.accounts.TeamLinks;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.results.ProtestTimes;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The links of the teams of a competition, given out one by one or to all teams that have
 * none. A link is good for a day after the last one of the competition, and then for as
 * long as a protest against the latest result that may have been posted is heard.
 */
@Service
@Transactional(readOnly = true)
public class TeamsLinks {

	private final TeamLinks links;

	private final CarriedTeamLinks carried;

	private final Competitions competitions;

	private final Entries entries;

	private final ProtestTimes protests;

	private final Clock clock;

	TeamsLinks(TeamLinks links, CarriedTeamLinks carried, Competitions competitions, Entries entries,
			ProtestTimes protests, Clock clock) {
		this.links = links;
		this.carried = carried;
		this.competitions = competitions;
		this.entries = entries;
		this.protests = protests;
		this.clock = clock;
	}

	/**
	 * Give a team its link, or a new one in place of that before.
	 * @return the token in it
	 * @throws RuleViolationException {@code competition-over}
	 * @throws NotFoundException if the competition has no such entry
	 */
	@Transactional
	public String give(CompetitionId competition, EntryId entry, Actor actor) {
		Instant end = end(competition);
		require(competition, entry);
		return this.links.give(new TeamLinks.GiveLink(competition.value(), entry.value(), end), actor);
	}

	/**
	 * Give a link to every team that takes part, has none that is good and waits for
	 * none, each as an act of its own on the record.
	 * @return how many were given
	 * @throws RuleViolationException {@code competition-over}
	 */
	@Transactional
	public int giveRest(CompetitionId competition, Actor actor) {
		Instant end = end(competition);
		List<TeamRow> without = of(competition).stream().filter(TeamRow::isWithout).toList();
		without.forEach((row) -> this.links
			.give(new TeamLinks.GiveLink(competition.value(), row.entry().id().value(), end), actor));
		return without.size();
	}

	/**
	 * Shut the link of a team.
	 * @throws NotFoundException if the competition has no such entry, or that no link
	 */
	@Transactional
	public void shut(CompetitionId competition, EntryId entry, Actor actor) {
		require(competition, entry);
		this.links.revoke(entry.value(), actor);
	}

	/**
	 * The order to make a link that a letter takes along.
	 * @throws RuleViolationException {@code competition-over}; {@code team-withdrawn} for
	 * one that does not take part
	 * @throws NotFoundException if the competition has no such entry
	 */
	TeamLinks.GiveLink orderFor(CompetitionId competition, EntryId id) {
		Instant end = end(competition);
		require(competition, id);
		EntryView entry = this.entries.entry(id);
		if (!entry.isEntered() || this.competitions.event(entry.event()).isCancelled()) {
			throw new RuleViolationException("team-withdrawn", Sentence.of("letters.link-withdrawn"));
		}
		return new TeamLinks.GiveLink(competition.value(), id.value(), end);
	}

	/** The teams of a competition by event and name, each with its link. */
	public List<TeamRow> of(CompetitionId competition) {
		Map<EventId, EventView> events = this.competitions.events(competition)
			.stream()
			.collect(Collectors.toMap(EventView::id, Function.identity()));
		Map<UUID, TeamLinks.LinkView> known = this.links.of(competition.value())
			.stream()
			.collect(Collectors.toMap((link) -> link.pass().entry(), Function.identity()));
		Set<UUID> underWay = this.carried.of(competition.value())
			.stream()
			.map(CarriedTeamLinks.Carrier::entry)
			.collect(Collectors.toSet());
		return this.entries.ofEvents(events.keySet())
			.stream()
			.map((entry) -> new TeamRow(entry, Objects.requireNonNull(events.get(entry.event())),
					known.get(entry.id().value()), underWay.contains(entry.id().value())))
			.sorted(Comparator.comparing((TeamRow row) -> row.event().listing().position())
				.thenComparing((row) -> row.entry().team().name(), String.CASE_INSENSITIVE_ORDER))
			.toList();
	}

	/**
	 * Until when a link of a competition is good.
	 * @throws RuleViolationException {@code competition-over} if it would open nothing
	 */
	Instant end(CompetitionId id) {
		CompetitionView competition = this.competitions.competition(id);
		Instant dayAfter = competition.facts().lastDay().plusDays(2).atStartOfDay(competition.zone()).toInstant();
		Instant end = this.protests.calculationUntil(dayAfter);
		if (!this.clock.instant().isBefore(end)) {
			throw new RuleViolationException("competition-over", Sentence.of("accounts.competition-over"));
		}
		return end;
	}

	private void require(CompetitionId competition, EntryId id) {
		EntryView entry = this.entries.entry(id);
		if (!this.competitions.event(entry.event()).competition().equals(competition)) {
			throw NotFoundException.of("entry", id);
		}
	}

	/**
	 * A team at the desk.
	 *
	 * @param link {@code null} where it never had one
	 * @param underWay whether a letter took one along of which nobody knows whether it
	 * arrived; it takes the place of the other as soon as it is used
	 */
	public record TeamRow(EntryView entry, EventView event, TeamLinks.@Nullable LinkView link, boolean underWay) {

		/** Tell whether the team takes part. */
		public boolean takesPart() {
			return this.entry.isEntered() && !this.event.isCancelled();
		}

		/** Tell whether it is to be given a link with all the others that have none. */
		public boolean isWithout() {
			return this.entry.isEntered() && !isGood() && !this.underWay;
		}

		/** Tell whether its link is shown still. */
		boolean isShown() {
			return isGood() && this.link != null && this.link.state().token() != null;
		}

		/** Tell whether the team has a link that opens its page. */
		public boolean isGood() {
			return this.link != null && this.link.state().standing() == LinkStanding.GOOD;
		}

	}

}
