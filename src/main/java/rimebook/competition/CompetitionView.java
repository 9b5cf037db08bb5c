package rimebook.competition;

import java.time.ZoneId;

/**
 * A competition as others see it.
 *
 * @param slug its name in public addresses, unique among competitions
 * @param facts as the secretary wrote it down
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record CompetitionView(CompetitionId id, String slug, DraftCompetition facts, CompetitionState state,
		int version) {

	/** Its name, as people know it. */
	public String name() {
		return this.facts.name();
	}

	/** The time zone of the rink; every time of the day is shown in it. */
	public ZoneId zone() {
		return this.facts.zone();
	}

}
