package rimebook.live.pictures;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import rimebook.published.Standing;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

/** Where the strokes of each picture lie. */
class PicturesTests {

	@Test
	void courseFollowsEachTeamFromItsOwnSkateOn() {
		Course course = Course.of(List.of(places("A", 1), places("B", 1, "A", 2), places("B", 1, "A", 2, "C", 3)));
		assertThat(course.steps()).containsExactly(1, 2, 3);
		assertThat(course.places()).isEqualTo(3);
		assertThat(course.flips()).isZero();
		Course.Line a = course.lines().get(1);
		assertThat(a.had()).containsExactly(1, 2, 2);
		assertThat(a.points()).containsExactly(new Course.Point("16.67%", "16.67%"), new Course.Point("83.33%", "50%"));
		assertThat(a.strokes()).extracting((stroke) -> stroke.to().x()).containsExactly("50%", "83.33%");
		assertThat(course.lines().get(2).strokes()).isEmpty();
		assertThat(course.lanes()).containsExactly(List.of("B"), List.of("A"), List.of("C"));
	}

	@Test
	void courseMarksTwoEarlierTeamsThatChangedTheirOrder() {
		Course course = Course.of(List.of(places("A", 1, "B", 2), places("B", 1, "C", 2, "A", 3)));
		assertThat(course.flips()).isEqualTo(1);
		assertThat(course.lines()).filteredOn((line) -> line.strokes().stream().anyMatch(Course.Stroke::flip))
			.extracting((line) -> line.row().team())
			.containsExactly("B", "A");
	}

	@Test
	void courseTakesTheLastOfSeveralAfterTheSameTeam() {
		Course course = Course.of(List.of(places("A", 1, "B", 2), places("B", 1, "A", 2)));
		assertThat(course.steps()).containsExactly(2);
		assertThat(course.lines().get(0).had()).containsExactly(1);
		assertThat(course.lines().get(0).row().team()).isEqualTo("B");
		assertThat(Course.of(List.of()).lines()).isEmpty();
	}

	@Test
	void teamThatLostItsPlaceEndsWhereItHadOneLast() {
		Course course = Course.of(List.of(places("A", 1, "B", 2), places("B", 1, "C", 2, "A", null)));
		Course.Line a = course.lines().get(2);
		assertThat(a.had()).containsExactly(1);
		assertThat(a.points()).hasSize(1);
		assertThat(course.flips()).isZero();
	}

	@Test
	void stripsFillWhatCountsAndKeepTheLowestInSight() {
		Standing.Row best = judged("A", 1, "2", new Standing.Card(560, 570, "1"), new Standing.Card(540, 550, "2"),
				new Standing.Card(400, 410, "3"));
		Standing.Row gone = row("B", null);
		Strips strips = Strips.of(standing("MAJORITY", 3, best, gone));
		assertThat(strips.teams()).hasSize(1);
		assertThat(strips.least()).isEqualTo(810);
		assertThat(strips.most()).isEqualTo(1130);
		assertThat(strips.teams().get(0).bars()).extracting(Bar::x, Bar::y, Bar::height, Bar::look)
			.containsExactly(tuple("3.33%", "0%", "100%", "counts"), tuple("36.67%", "11%", "89%", "counts"),
					tuple("70%", "85%", "15%", "open"));
		assertThat(Strips.of(standing("ONE_BY_ONE", 3, best)).teams().get(0).bars()).extracting(Bar::look)
			.containsOnly("counts");
		assertThat(Strips.of(standing("MAJORITY", 3, gone)).teams()).isEmpty();
	}

	@Test
	void stripsOfPointsLeaveOutWhatWasLeftOut() {
		Standing.Row row = scored("A", score(List.of(), List.of(new Standing.Score.Mark(700, "COUNTED"),
				new Standing.Score.Mark(800, "DROPPED_HIGHEST"), new Standing.Score.Mark(null, "ABSENT"))));
		assertThat(Strips.of(standing("POINTS", 3, row)).teams().get(0).bars()).extracting(Bar::look)
			.containsExactly("counts", "open");
	}

	@Test
	void gridMarksTheMajority() {
		Standing.Row row = judged("A", 1, "2", new Standing.Card(560, 570, "1"), new Standing.Card(540, 550, "2"),
				new Standing.Card(400, 410, "3"));
		Grid grid = Grid.of(standing("MAJORITY", 3, row, row("B", null)));
		assertThat(grid.judges()).containsExactly(1, 2, 3);
		assertThat(grid.teams()).hasSize(1);
		assertThat(grid.teams().get(0).cells()).extracting((cell) -> cell.bar().look(), Grid.Cell::middle)
			.containsExactly(tuple("counts", "16.67%"), tuple("counts", "50%"), tuple("open", "83.33%"));
	}

	@Test
	void bandsReachFromTheBestPlaceToTheWorst() {
		Standing.Outlook outlook = new Standing.Outlook(
				List.of(new Standing.Outlook.Chance("a", "A", true, new Standing.Outlook.Range(1, 2, true), null),
						new Standing.Outlook.Chance("b", "B", false, new Standing.Outlook.Range(2, 3, false),
								new Standing.Outlook.Range(2, 4, false))),
				List.of(), List.of());
		Bands bands = Bands.of(outlook);
		assertThat(bands.places()).isEqualTo(4);
		assertThat(bands.of(new Standing.Outlook.Range(1, 2, true)))
			.isEqualTo(new Bar("0%", "50%", "0%", "100%", "exact"));
		assertThat(bands.of(new Standing.Outlook.Range(4, 4, false)))
			.isEqualTo(new Bar("75%", "25%", "0%", "100%", "bound"));
	}

	@Test
	void differencesPointToWhoHasMore() {
		Standing.Score one = score(List.of(element(1, "ME4", 900), element(2, "TwE4", 800)), List.of());
		Standing.Score other = new Standing.Score(0, 0, 0, 0, 100, List.of(element(1, "ME3", 700)),
				List.of(new Standing.Score.ComponentLine("Composition", 133, List.of(), 700, 1200)), List.of());
		List<Differences.Line> lines = Differences.of(one, other).lines();
		assertThat(lines).extracting(Differences.Line::kind)
			.containsExactly(Differences.Kind.ELEMENT, Differences.Kind.ELEMENT, Differences.Kind.COMPONENT,
					Differences.Kind.DEDUCTIONS);
		assertThat(lines).extracting(Differences.Line::difference).containsExactly(200, 800, -200, 100);
		assertThat(lines.get(0).bar()).isEqualTo(new Bar("37.5%", "12.5%", "0%", "100%", "ahead"));
		assertThat(lines.get(2).bar()).isEqualTo(new Bar("50%", "12.5%", "0%", "100%", "behind"));
		assertThat(lines.get(1).other()).isEqualTo("–");
		assertThat(Differences.of(one, one).lines()).allMatch((line) -> line.bar().width().equals("0%"));
	}

	private static Standing.Score.ElementLine element(int number, String code, int score) {
		return new Standing.Score.ElementLine(number, code, code, "COUNTS", score, List.of(), 0, score);
	}

	private static Standing.Score score(List<Standing.Score.ElementLine> elements, List<Standing.Score.Mark> marks) {
		return new Standing.Score(0, 0, 0, 0, 0, elements,
				List.of(new Standing.Score.ComponentLine("Composition", 133, marks, 700, 1000)), List.of());
	}

	/** Teams with their places, {@code null} for none. */
	private static Standing places(@Nullable Object... teams) {
		List<Standing.Row> rows = new ArrayList<>();
		for (int i = 0; i < teams.length; i += 2) {
			rows.add(row(String.valueOf(teams[i]), (Integer) teams[i + 1]));
		}
		return standing("MAJORITY", 3, rows.toArray(Standing.Row[]::new));
	}

	private static Standing standing(String method, int judges, Standing.Row... rows) {
		return new Standing("Cup", "Junior", "Free", "Rulebook", Sentence.said("Rule set"), method, judges, rows.length,
				9, "", "", List.of(), List.of(rows));
	}

	private static Standing.Row row(String team, @Nullable Integer place) {
		return new Standing.Row(place, false, null, team, team, "Club", 1, "SKATED", List.of(), List.of(), List.of(),
				null, Sentence.said("Because."));
	}

	private static Standing.Row judged(String team, int place, String majority, Standing.Card... cards) {
		return new Standing.Row(place, false, null, team, team, "Club", 1, "SKATED", List.of(cards),
				List.of(new Standing.Figure("majority-place", majority)), List.of(), null, Sentence.said("Because."));
	}

	private static Standing.Row scored(String team, Standing.Score score) {
		return new Standing.Row(1, false, null, team, team, "Club", 1, "SKATED", List.of(), List.of(), List.of(), 0,
				Sentence.said("Because."), score, null);
	}

}
