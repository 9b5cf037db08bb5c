package rimebook.arrival;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.EventId;
import rimebook.entries.EntryId;
import rimebook.rosters.EventEligibility;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RulesView;

/** Compares how many there are of each team with how many its event asks for. */
@Service
@Transactional(readOnly = true)
public class Strength {

	private final Arrivals arrivals;

	private final EventEligibility eligibility;

	Strength(Arrivals arrivals, EventEligibility eligibility) {
		this.arrivals = arrivals;
		this.eligibility = eligibility;
	}

	/**
	 * The teams of an event that are too few; none where the event asks for no number. A
	 * team without a roster is left out, since nobody knows how many it is. A waiver does
	 * not take a team away: it may skate, and what follows may still follow.
	 */
	public Map<EntryId, TooFew> tooFew(EventId event) {
		RulesView rules = this.eligibility.of(event);
		Integer least = rules.leastOnIce();
		if (least == null) {
			return Map.of();
		}
		return this.arrivals.taking(event)
			.stream()
			.filter((team) -> !team.people().isEmpty() && skating(team) < least)
			.map((team) -> new TooFew(team.entry().id(), skating(team), least, rules.whenFewer()))
			.collect(Collectors.toMap(TooFew::entry, Function.identity()));
	}

	private static long skating(CheckIn team) {
		boolean wereSeen = team.here() > 0;
		return team.people()
			.stream()
			.filter((person) -> person.place().role() == PlaceRole.SKATES && (person.isHere() || !wereSeen))
			.count();
	}

}
