package rimebook.stand;

import org.springframework.stereotype.Component;

import rimebook.entries.Entries;
import rimebook.entries.TeamView;
import rimebook.performances.PerformanceView;

/** Names the team of each performance. */
@Component
class StandRows {

	private final Entries entries;

	StandRows(Entries entries) {
		this.entries = entries;
	}

	StandView.Row of(PerformanceView performance) {
		TeamView team = this.entries.entry(performance.entry()).team();
		return new StandView.Row(performance, team.name(), team.spokenAs(), team.club().name());
	}

}
