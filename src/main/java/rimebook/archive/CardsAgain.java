package rimebook.archive;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

import rimebook.published.Standing;

/**
 * Looks whether the newest standing of a segment has the marks of the newest cards of the
 * seats that count and, in points judging, the elements of the newest called list.
 */
final class CardsAgain {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final Standings.Rows rows;

	private final Standings.OfSegment segment;

	private final String id;

	CardsAgain(Standings.Rows rows, Standings.OfSegment segment) {
		this.rows = rows;
		this.segment = segment;
		this.id = Standings.text(segment.row(), "id");
	}

	void faults(List<String> faults) {
		Standing standing = this.segment.newest();
		if (standing == null) {
			return;
		}
		List<String> seats = standing.judgeNumbers().stream().map((judge) -> counting(standing, judge)).toList();
		Map<String, Map<String, TableRow>> cards = newestCards();
		for (Standing.Row row : standing.rows()) {
			String performance = performance(row.entry());
			Map<String, TableRow> own = cards.getOrDefault(performance, Map.of());
			Standing.Score score = row.score();
			for (int i = 0; i < seats.size(); i++) {
				TableRow card = own.get(seats.get(i));
				boolean same = (score != null) ? isOf(card, called(performance), score, i)
						: i >= row.cards().size() || isOf(card, row.cards().get(i));
				if (!same) {
					faults.add(standing.event() + ", " + standing.segment() + ": what judge "
							+ standing.judgeNumbers().get(i) + " gave " + row.team()
							+ " is not on that judge's newest card.");
				}
			}
			if (score != null && !isCalled(called(performance), score)) {
				faults.add(standing.event() + ", " + standing.segment() + ": the elements of " + row.team()
						+ " are not those of the newest called list.");
			}
		}
	}

	private List<TableRow> called(String performance) {
		return this.rows.of("called_list")
			.stream()
			.filter((row) -> Standings.text(row, "performance_id").equals(performance))
			.max(sequence())
			.map((row) -> JSON.readValue(Standings.text(row, "elements"), new TypeReference<List<TableRow>>() {
			}))
			.orElse(List.of());
	}

	private static boolean isCalled(List<TableRow> called, Standing.Score score) {
		if (called.size() != score.elementLines().size()) {
			return false;
		}
		Map<String, Standing.Score.ElementLine> lines = new HashMap<>();
		score.elementLines().forEach((line) -> lines.put(String.valueOf(line.number()), line));
		return called.stream().allMatch((element) -> {
			Standing.Score.ElementLine line = lines.get(Standings.text(element, "number"));
			Object base = element.get("base");
			return line != null && line.code().equals(element.get("code")) && line.worth().equals(element.get("worth"))
					&& (base == null || line.base() == 0 || base.toString().equals(String.valueOf(line.base())));
		});
	}

	/** What counts nowhere, since the judge was excused, is nowhere looked up. */
	private static boolean isOf(@Nullable TableRow card, List<TableRow> called, Standing.Score score, int judge) {
		Map<String, Map<String, Integer>> marks = (card == null) ? Map.of()
				: JSON.readValue(Standings.text(card, "marks"), new TypeReference<Map<String, Map<String, Integer>>>() {
				});
		Map<String, String> elements = new HashMap<>();
		called.forEach((element) -> elements.put(Standings.text(element, "number"), Standings.text(element, "id")));
		boolean grades = score.elementLines()
			.stream()
			.filter((line) -> judge < line.grades().size() && line.grades().get(judge).given() != null)
			.allMatch((line) -> Objects.equals(line.grades().get(judge).given(),
					marks.getOrDefault("grades", Map.of()).get(elements.get(String.valueOf(line.number())))));
		return grades && score.componentLines()
			.stream()
			.filter((line) -> judge < line.marks().size() && line.marks().get(judge).given() != null)
			.allMatch((line) -> Objects.equals(line.marks().get(judge).given(),
					marks.getOrDefault("components", Map.of()).get(line.name())));
	}

	private static boolean isOf(@Nullable TableRow card, Standing.Card shown) {
		return card != null && Standings.text(card, "first_mark").equals(String.valueOf(shown.first()))
				&& Standings.text(card, "second_mark").equals(String.valueOf(shown.second()));
	}

	/** The seat that counts for a judge: the substitute's, once one has taken over. */
	private String counting(Standing standing, int judge) {
		String event = Standings.text(this.segment.row(), "event_id");
		String seat = this.rows.of("seat")
			.stream()
			.filter((row) -> Standings.text(row, "event_id").equals(event)
					&& Standings.text(row, "kind").equals("JUDGE")
					&& Standings.text(row, "number").equals(String.valueOf(judge)))
			.map((row) -> Standings.text(row, "id"))
			.findFirst()
			.orElseThrow(() -> new ArchiveRefusal(standing.event() + " has no seat of judge " + judge + "."));
		return this.rows.of("panel_change")
			.stream()
			.filter((row) -> Standings.text(row, "segment_id").equals(this.id))
			.filter((row) -> Standings.text(row, "seat_id").equals(seat))
			.filter((row) -> List.of("SUBSTITUTED", "LEFT_OUT", "SEAT_BACK").contains(Standings.text(row, "kind")))
			.max(sequence())
			.filter((row) -> Standings.text(row, "kind").equals("SUBSTITUTED"))
			.map((row) -> Standings.text(row, "substitute_id"))
			.orElse(seat);
	}

	private static Comparator<TableRow> sequence() {
		return Comparator.comparing((row) -> Integer.valueOf(Standings.text(row, "sequence")));
	}

	/** By performance and seat. */
	private Map<String, Map<String, TableRow>> newestCards() {
		Map<String, Map<String, TableRow>> newest = new HashMap<>();
		Stream.concat(this.rows.of("card_submission").stream(), this.rows.of("points_card").stream())
			.sorted(sequence())
			.forEach((card) -> newest
				.computeIfAbsent(Standings.text(card, "performance_id"), (performance) -> new HashMap<>())
				.put(Standings.text(card, "seat_id"), card));
		return newest;
	}

	/** The performance that counts; one that was skated again is set aside. */
	private String performance(String entry) {
		return this.rows.of("performance")
			.stream()
			.filter((row) -> Standings.text(row, "segment_id").equals(this.id))
			.filter((row) -> Standings.text(row, "entry_id").equals(entry))
			.max(Comparator.comparing((row) -> Integer.valueOf(Standings.text(row, "skate"))))
			.map((row) -> Objects.requireNonNull(row.get("id")).toString())
			.orElse("");
	}

}
