package rimebook.review;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Hundredths;

/**
 * The marks of a published standing of a segment, thing by thing. Only teams that have
 * skated and elements that count are looked at: of the others no mark made a place.
 */
final class PublishedMarks {

	private static final String COUNTS = "COUNTS";

	private PublishedMarks() {
	}

	/** What was judged by aspects; empty in a way of judging that has none of them. */
	static Map<Aspect, List<MarkLine>> of(Standing standing) {
		Map<Aspect, List<MarkLine>> lines = new EnumMap<>(Aspect.class);
		standing.rows().stream().filter((row) -> row.has(EntryStatus.SKATED)).forEach((row) -> {
			MarkLine.Team team = new MarkLine.Team(row.entry(), row.startNumber(), row.team());
			Standing.Score score = row.score();
			if (score != null) {
				addScore(lines, team, score);
			}
			else if (!row.cards().isEmpty()) {
				addCards(lines, team, row.cards());
			}
		});
		lines.values().removeIf((all) -> all.stream().allMatch(PublishedMarks::isBlank));
		return lines;
	}

	private static void addCards(Map<Aspect, List<MarkLine>> lines, MarkLine.Team team, List<Standing.Card> cards) {
		add(lines, Aspect.PLACE, new MarkLine(team, "", each(cards, Standing.Card::ordinalHundredths)));
		add(lines, Aspect.FIRST_MARK, new MarkLine(team, "", each(cards, Standing.Card::first)));
		add(lines, Aspect.SECOND_MARK, new MarkLine(team, "", each(cards, Standing.Card::second)));
	}

	private static void addScore(Map<Aspect, List<MarkLine>> lines, MarkLine.Team team, Standing.Score score) {
		score.elementLines()
			.stream()
			.filter((element) -> element.worth().equals(COUNTS))
			.map((element) -> new MarkLine(team, element.number() + " " + element.code(),
					each(element.grades(), PublishedMarks::inHundredths)))
			.forEach((line) -> add(lines, Aspect.GRADE, line));
		score.componentLines()
			.stream()
			.map((component) -> new MarkLine(team, component.name(),
					each(component.marks(), Standing.Score.Mark::given)))
			.forEach((line) -> add(lines, Aspect.COMPONENT, line));
	}

	private static @Nullable Integer inHundredths(Standing.Score.Mark grade) {
		Integer given = grade.given();
		return (given != null) ? given * Hundredths.ONE : null;
	}

	private static <T> List<@Nullable Integer> each(List<T> cards, Function<T, @Nullable Integer> given) {
		List<@Nullable Integer> all = new ArrayList<>();
		cards.forEach((card) -> all.add(given.apply(card)));
		return all;
	}

	private static void add(Map<Aspect, List<MarkLine>> lines, Aspect aspect, MarkLine line) {
		lines.computeIfAbsent(aspect, (each) -> new ArrayList<>()).add(line);
	}

	private static boolean isBlank(MarkLine line) {
		return line.given().stream().allMatch(Objects::isNull);
	}

}
