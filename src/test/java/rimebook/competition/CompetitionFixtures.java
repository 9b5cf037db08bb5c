package rimebook.competition;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

import rimebook.shared.Actor;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.PointsRules;

/** Drafts with sensible values, for tests of every module. */
public final class CompetitionFixtures {

	/** A secretary at a laptop. */
	public static final Actor SECRETARY = new Actor("Ada Quill", "secretary", "test");

	private CompetitionFixtures() {
	}

	/** A two-day competition of that name. */
	public static DraftCompetition aCompetition(String name) {
		return new DraftCompetition(name, "Skerrywick", ZoneId.of("Europe/Helsinki"), LocalDate.of(2027, 2, 13),
				LocalDate.of(2027, 2, 14), "Rulebook 2026/27");
	}

	/** A majority event with a short programme and a free skating, signed at once. */
	public static DraftEvent anEvent(String name, int judges) {
		return new DraftEvent(name, DraftEvent.Judging.by(JudgingMethod.MAJORITY, judges), List.of(aShort(), aFree()))
			.signedAtOnce();
	}

	/** The rule set of points judging that comes with the service. */
	public static PointsRules pointsRules() {
		return new RuleSets().ruleSet("synchronized-2025-26");
	}

	/** An event judged by points, one segment. */
	public static DraftEvent aPointsEvent(String name, int judges) {
		return new DraftEvent(name,
				DraftEvent.Judging.byPoints(judges, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
				List.of(aFree()))
			.signedAtOnce();
	}

	/** A short programme of factor 0.5. */
	public static DraftEvent.DraftSegment aShort() {
		return new DraftEvent.DraftSegment("Short programme", SegmentKind.SHORT, 50, 160, 10);
	}

	/** A free skating of factor 1.0. */
	public static DraftEvent.DraftSegment aFree() {
		return new DraftEvent.DraftSegment("Free skating", SegmentKind.FREE, 100, 240, 10);
	}

}
