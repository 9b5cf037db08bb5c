package rimebook.testsupport;

import java.util.List;

import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;

/** A {@link SmallCompetition} whose event is judged by points. */
public final class PointsCompetition {

	private PointsCompetition() {
	}

	/** Build a running one with a complete panel and both orders due. */
	public static SmallCompetition running(ApplicationContext context, int teams, int judges) {
		return SmallCompetition.running(context, teams,
				new DraftEvent("Senior",
						DraftEvent.Judging.byPoints(judges,
								new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
						List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()))
					.signedAtOnce());
	}

}
