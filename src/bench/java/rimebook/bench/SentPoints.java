package rimebook.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.Performance;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsCombination;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.PointsTabulation;

/** Cards of grades and components, for elements that the technical panel called. */
final class SentPoints implements SentCards {

	/** What the panel calls of every team. */
	static final List<String> CODES = List.of("I4+pi3", "ME4", "NHE3+s4", "AC2");

	private static final List<String> COMPONENTS = List.of("Composition", "Presentation", "Skating Skills");

	private final List<Map<String, Map<Integer, Card>>> segments = List.of(new LinkedHashMap<>(), new LinkedHashMap<>());

	private final PointsRules rules;

	private final Random random;

	SentPoints(PointsRules rules, Random random) {
		this.rules = rules;
		this.random = random;
	}

	@Override
	public String path() {
		return "/api/points-cards/";
	}

	@Override
	public String next(int segment, JsonNode task, int judge) {
		Card card = new Card(CODES.stream().map((code) -> this.random.nextInt(11) - 5).toList(),
				COMPONENTS.stream().map((name) -> component()).toList());
		this.segments.get(segment)
			.computeIfAbsent(task.get("now").get("team").asString(), (key) -> new HashMap<>())
			.put(judge, card);
		JsonNode elements = task.get("points").get("elements");
		Map<String, Integer> grades = new LinkedHashMap<>();
		IntStream.range(0, CODES.size())
			.forEach((i) -> grades.put(elements.get(i).get("id").asString(), card.grades().get(i)));
		Map<String, Object> components = new LinkedHashMap<>();
		IntStream.range(0, COMPONENTS.size())
			.forEach((i) -> components.put(COMPONENTS.get(i), new Points(card.components().get(i)).toDecimal()));
		return JsonMapper.shared()
			.writeValueAsString(Map.of("performance", task.get("now").get("performance").asString(), "sequence", 1, "grades",
					grades, "components", components));
	}

	private int component() {
		return 25 * (20 + this.random.nextInt(20));
	}

	@Override
	public String kept(String sent) {
		JsonNode card = JsonMapper.shared().readTree(sent);
		Map<String, Integer> components = new TreeMap<>();
		card.get("components")
			.properties()
			.forEach((mark) -> components.put(mark.getKey(), mark.getValue().decimalValue().movePointRight(2).intValueExact()));
		return card.get("performance").asString() + " " + card.get("sequence").asInt() + " "
				+ marks(card.get("grades")) + " " + components;
	}

	/** Return figures by name, as {@link #kept} says them. */
	static Map<String, Integer> marks(JsonNode object) {
		Map<String, Integer> marks = new TreeMap<>();
		object.properties().forEach((mark) -> marks.put(mark.getKey(), mark.getValue().asInt()));
		return marks;
	}

	@Override
	public Map<String, String> correct(int segment, String team, int judge) {
		Map<Integer, Card> cards = this.segments.get(segment).get(team);
		Card before = cards.get(judge);
		int mark = component();
		while (mark == before.components().get(0)) {
			mark = component();
		}
		List<Integer> components = new ArrayList<>(before.components());
		components.set(0, mark);
		cards.put(judge, new Card(before.grades(), components));
		return Map.of("value", new Points(mark).toString());
	}

	@Override
	public void forget(int segment, String team) {
		this.segments.get(segment).remove(team);
	}

	@Override
	public Map<String, Integer> places(int segment) {
		Map<String, Integer> places = new HashMap<>();
		standing(segment).rows().forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

	private PointsStanding standing(int segment) {
		List<Performance> skated = new ArrayList<>();
		this.segments.get(segment).forEach((team, cards) -> skated.add(performance(team, cards)));
		return PointsTabulation.standing(this.rules.segment((segment == 0) ? SegmentKind.SHORT : SegmentKind.FREE, "senior"),
				skated);
	}

	private static Performance performance(String team, Map<Integer, Card> cards) {
		List<Card> inOrder = cards.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).toList();
		List<JudgedElement> elements = IntStream.range(0, CODES.size())
			.mapToObj((i) -> new JudgedElement(i + 1, CODES.get(i), JudgedElement.ElementWorth.COUNTS, null,
					inOrder.stream().map((card) -> card.grades().get(i)).toList()))
			.toList();
		List<JudgedComponent> components = IntStream.range(0, COMPONENTS.size())
			.mapToObj((i) -> new JudgedComponent(COMPONENTS.get(i),
					inOrder.stream().map((card) -> new Points(card.components().get(i))).toList()))
			.toList();
		return Performance.skated(team, elements, components, List.of());
	}

	@Override
	public Map<String, Integer> places() {
		Map<String, Integer> places = new HashMap<>();
		PointsCombination.ofStandings(this.rules.disqualifiedPlaces(), List.of(standing(0), standing(1)))
			.rows()
			.forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

	/** Grades in the order of the elements, components in hundredths in theirs. */
	private record Card(List<Integer> grades, List<Integer> components) {
	}

}
