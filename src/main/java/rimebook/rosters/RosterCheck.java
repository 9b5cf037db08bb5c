package rimebook.rosters;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.RequiredElements;
import rimebook.rosters.eligibility.Eligibility;
import rimebook.rosters.eligibility.Finding;
import rimebook.rosters.eligibility.Neighbours;
import rimebook.rosters.eligibility.Team;
import rimebook.wording.Sentence;

/**
 * Compares the rosters of a competition with the rules of its events. A team that
 * withdrew is neither looked at nor compared with. Asks the database the same number of
 * questions whatever the number of teams.
 */
@Service
@Transactional(readOnly = true)
public class RosterCheck {

	private final Competitions competitions;

	private final Entries entries;

	private final Rosters rosters;

	private final EventEligibility rules;

	private final Waivers waivers;

	private final Contacts contacts;

	private final RequiredElements required;

	RosterCheck(Competitions competitions, Entries entries, Rosters rosters, EventEligibility rules, Waivers waivers,
			Contacts contacts, RequiredElements required) {
		this.required = required;
		this.competitions = competitions;
		this.entries = entries;
		this.rosters = rosters;
		this.rules = rules;
		this.waivers = waivers;
		this.contacts = contacts;
	}

	/**
	 * Every team that takes part, by event and name.
	 * @throws rimebook.shared.NotFoundException if there is no such competition
	 */
	public List<TeamCheck> of(CompetitionId id) {
		Map<EventId, EventView> events = new HashMap<>();
		this.competitions.events(this.competitions.competition(id).id())
			.forEach((event) -> events.put(event.id(), event));
		List<EntryView> entries = this.entries.ofEvents(events.keySet())
			.stream()
			.filter(EntryView::isEntered)
			.sorted(Comparator.comparing((entry) -> listed(events, entry).listing().position()))
			.toList();
		List<EntryId> ids = entries.stream().map(EntryView::id).toList();
		Known known = new Known(entries, this.rosters.of(ids), this.waivers.of(ids), events);
		Map<EventId, RulesView> rules = this.rules.of(events.keySet());
		Map<EntryId, List<ContactView>> contacts = this.contacts.of(ids);
		Map<EntryId, List<Sentence>> plans = this.required.otherwise(events.values(), entries);
		return entries.stream()
			.map((entry) -> new TeamCheck(entry, listed(events, entry), known(rules, entry),
					Objects.requireNonNull(known.rosters().get(entry.id())), known.findings(entry, known(rules, entry)),
					contacts.getOrDefault(entry.id(), List.of()), plans.getOrDefault(entry.id(), List.of())))
			.toList();
	}

	/**
	 * One team that takes part.
	 * @throws rimebook.shared.NotFoundException if there is no such entry
	 */
	public TeamCheck of(EntryId id) {
		EntryView entry = this.entries.entry(id);
		EventView event = this.competitions.event(entry.event());
		return of(event.competition()).stream()
			.filter((check) -> check.entry().id().equals(id))
			.findFirst()
			.orElseGet(() -> new TeamCheck(entry, event, this.rules.of(event.id()), this.rosters.of(id), List.of(),
					this.contacts.of(id), List.of()));
	}

	private static EventView listed(Map<EventId, EventView> events, EntryView entry) {
		return Objects.requireNonNull(events.get(entry.event()));
	}

	private static RulesView known(Map<EventId, RulesView> rules, EntryView entry) {
		return Objects.requireNonNull(rules.get(entry.event()));
	}

	/** What a team is compared with. */
	private static final class Known {

		private final List<EntryView> entries;

		private final Map<EntryId, RosterView> rosters;

		private final Map<EntryId, List<WaiverView>> waivers;

		private final Map<EventId, EventView> events;

		private final Map<EntryId, Team> teams = new HashMap<>();

		Known(List<EntryView> entries, Map<EntryId, RosterView> rosters, Map<EntryId, List<WaiverView>> waivers,
				Map<EventId, EventView> events) {
			this.entries = entries;
			this.rosters = rosters;
			this.waivers = waivers;
			this.events = events;
			entries.forEach((entry) -> this.teams.put(entry.id(), team(entry)));
		}

		Map<EntryId, RosterView> rosters() {
			return this.rosters;
		}

		List<TeamCheck.Checked> findings(EntryView entry, RulesView rules) {
			return Eligibility.findings(rules.rules(), known(entry), neighbours(entry))
				.stream()
				.map((finding) -> checked(entry, finding))
				.toList();
		}

		private Neighbours neighbours(EntryView entry) {
			List<Team> sameEvent = new ArrayList<>();
			List<Team> clubBefore = new ArrayList<>();
			for (EntryView other : this.entries) {
				if (other.id().equals(entry.id())) {
					continue;
				}
				if (other.event().equals(entry.event())) {
					sameEvent.add(known(other));
				}
				if (other.team().club().id().equals(entry.team().club().id()) && isBefore(other, entry)) {
					clubBefore.add(known(other));
				}
			}
			return new Neighbours(sameEvent, clubBefore);
		}

		/**
		 * The club's first team is that of the earlier event, then who was entered
		 * earlier.
		 */
		private boolean isBefore(EntryView other, EntryView entry) {
			int events = Integer.compare(listed(this.events, other).listing().position(),
					listed(this.events, entry).listing().position());
			return (events != 0) ? events < 0 : other.acceptance().enteredAt().isBefore(entry.acceptance().enteredAt());
		}

		private TeamCheck.Checked checked(EntryView entry, Finding finding) {
			RosterView.@Nullable PlaceId place = Objects.requireNonNull(this.rosters.get(entry.id()))
				.present()
				.stream()
				.filter((one) -> one.skater().id().toString().equals(finding.member()))
				.map(RosterView.Place::id)
				.findFirst()
				.orElse(null);
			return new TeamCheck.Checked(finding, place,
					this.waivers.getOrDefault(entry.id(), List.of())
						.stream()
						.filter((waiver) -> waiver.holds() && waiver.rule() == finding.rule()
								&& Objects.equals(waiver.place(), place))
						.findFirst()
						.orElse(null));
		}

		private Team known(EntryView entry) {
			return Objects.requireNonNull(this.teams.get(entry.id()));
		}

		private Team team(EntryView entry) {
			return new Team(entry.team().name(),
					Objects.requireNonNull(this.rosters.get(entry.id()))
						.present()
						.stream()
						.map((place) -> new Team.Member(place.skater().id().toString(), place.skater().name(),
								place.role() == PlaceRole.ALTERNATE, place.skater().facts().birthDate(),
								place.skater().facts().membershipNumber()))
						.toList());
		}

	}

}
