package rimebook.competition;

import org.springframework.context.annotation.Import;

/** The beans of this module behind its facade: import it into a slice that needs them. */
@Import({ Competitions.class, MoveRules.class, EventsFirst.class, RuleSets.class, StillOpen.class })
public final class CompetitionModule {

	private CompetitionModule() {
	}

}
