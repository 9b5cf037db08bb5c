package rimebook.timetable.plan;

import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** What clubs are told of a changed timetable. */
class TeamChangesTests {

	private static final Programme PROGRAMME = new Programme(Days.ZONE,
			List.of(segment("Short", "Junior", team("Aurora", "North", 1), team("Borealis", "South", 2)),
					segment("Free", "Senior", team("Comet", "North", 1))),
			List.of());

	private static final Block LUNCH = Days.block("Lunch", Block.Kind.BREAK, 30);

	private static final Block MEDALS = new Block(Days.id("Medals"), Days.MAIN, Block.Kind.CEREMONY, "", 600,
			Block.Timing.NEXT, Block.Part.all(Days.id("Short")));

	@Test
	void eachClubHearsOfItsOwnTeamsAlone() {
		Programmed before = programmed(Days.skated("Short"), MEDALS, Days.skated("Free"));
		Programmed after = programmed(Days.skated("Short"), LUNCH, MEDALS, Days.skated("Free"));
		assertThat(told(before, after)).containsExactly("North: Aurora CEREMONY 09:12 > 09:42",
				"North: Comet SEGMENT 09:22 > 09:52", "South: Borealis CEREMONY 09:12 > 09:42");
		assertThat(told(after, after)).isEmpty();
	}

	@Test
	void aBlockThatWasMadeAnewIsNoChange() {
		Block free = Days.skated("Free");
		Block anew = new Block(Days.id("anew"), free.place(), free.kind(), "", 0, free.timing(), free.part());
		assertThat(told(programmed(free), programmed(anew))).isEmpty();
	}

	@Test
	void anotherSurfaceWhatIsNewAndWhatIsGoneIsTold() {
		assertThat(told(programmed(Days.skated("Free")), programmed(Days.skated("Free").at(Days.SIDE))))
			.containsExactly("North: Comet SEGMENT 09:00 > 09:00");
		assertThat(told(programmed(Days.skated("Free")), programmed(LUNCH)))
			.containsExactly("North: Comet SEGMENT 09:00 > -");
		assertThat(told(programmed(LUNCH), programmed(Days.skated("Free"))))
			.containsExactly("North: Comet SEGMENT - > 09:00");
	}

	@Test
	void twoPracticesOfATeamAreTwo() {
		Block first = practice("first");
		Programmed before = programmed(first, practice("second"));
		Programmed after = programmed(first, LUNCH, practice("second"));
		assertThat(told(before, after)).containsExactly("North: Comet PRACTICE 09:08 > 09:38");
	}

	private static Block practice(String name) {
		return new Block(Days.id(name), Days.MAIN, Block.Kind.PRACTICE, "", 480, Block.Timing.NEXT,
				Block.Part.all(Days.id("Free")));
	}

	private static List<String> told(Programmed before, Programmed after) {
		return TeamChanges.between(before, after)
			.stream()
			.flatMap((club) -> club.teams()
				.stream()
				.flatMap((one) -> one.changes()
					.stream()
					.map((change) -> club.club() + ": " + one.team().name() + " " + change.item().kind() + " "
							+ time(change.was()) + " > " + time(change.now()))))
			.toList();
	}

	private static String time(TeamChanges.When when) {
		return (when != null) ? Days.time(when.at()) : "-";
	}

	private static Programmed programmed(Block... blocks) {
		Plan plan = Days.plan(blocks);
		return Programmed.of(plan, Layout.of(plan, PROGRAMME), PROGRAMME);
	}

	private static Programme.Segment segment(String name, String event, Programme.Team... teams) {
		return new Programme.Segment(Days.id(name), new Programme.Named(Days.id(event), event), name, 170, false, true,
				List.of(teams));
	}

	private static Programme.Team team(String name, String club, int number) {
		return new Programme.Team(Days.id(name), name, club, number, 1);
	}

}
