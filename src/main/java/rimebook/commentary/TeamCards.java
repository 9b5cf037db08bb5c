package rimebook.commentary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.ForTheAnnouncer;
import rimebook.entries.PlannedElements;
import rimebook.live.ToldSegment;
import rimebook.rulings.Rulings;

/** Puts together what may be told of a team. */
@Component
class TeamCards {

	private final Entries entries;

	private final ForTheAnnouncer announced;

	private final PlannedElements plans;

	private final RuleSets ruleSets;

	private final Rulings rulings;

	private final TeamHistory history;

	TeamCards(Entries entries, ForTheAnnouncer announced, PlannedElements plans, RuleSets ruleSets, Rulings rulings,
			TeamHistory history) {
		this.entries = entries;
		this.announced = announced;
		this.plans = plans;
		this.ruleSets = ruleSets;
		this.rulings = rulings;
		this.history = history;
	}

	/**
	 * Put it together.
	 * @param called what was called of it so far
	 */
	TeamCard of(ToldSegment told, ToldSegment.ToldStart start, ElementsCalled.CalledSoFar called) {
		EntryView entry = this.entries.entry(EntryId.of(start.entry()));
		SegmentId segment = told.segment().id();
		return new TeamCard(start, entry.team(), this.announced.of(entry.id(), segment),
				planned(told.event(), this.plans.of(entry.id(), segment).codes(), called),
				called.elements().stream().map((sign) -> this.ruleSets.elementNameOf(told.event(), sign)).toList(),
				this.rulings.releasedOf(entry.id(), segment).stream().map(TeamCard.Released::of).toList(),
				this.history.before(told, entry.id()), this.history.earlier(entry));
	}

	private List<TeamCard.Planned> planned(EventView event, List<String> codes, ElementsCalled.CalledSoFar called) {
		int newest = called.ofPlan().stream().max(Comparator.naturalOrder()).orElse(0);
		List<TeamCard.Planned> planned = new ArrayList<>();
		for (String code : codes) {
			int number = planned.size() + 1;
			String state = (number == newest) ? "now" : called.ofPlan().contains(number) ? "done" : "to-come";
			planned.add(new TeamCard.Planned(number, code, this.ruleSets.nameOf(event, code), state));
		}
		return planned;
	}

}
