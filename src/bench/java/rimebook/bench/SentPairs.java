package rimebook.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Combination;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;

/** Cards of two marks. */
final class SentPairs implements SentCards {

	private final List<Map<String, Map<Integer, CardMarks>>> segments = List.of(new LinkedHashMap<>(), new LinkedHashMap<>());

	private final boolean oneByOne;

	private final Random random;

	SentPairs(boolean oneByOne, Random random) {
		this.oneByOne = oneByOne;
		this.random = random;
	}

	@Override
	public String path() {
		return "/api/cards/";
	}

	@Override
	public String next(int segment, JsonNode task, int judge) {
		CardMarks marks = new CardMarks(mark(), mark());
		keep(segment, task.get("now").get("team").asString(), judge, marks);
		return "{\"performance\":\"%s\",\"sequence\":1,\"first\":%s,\"second\":%s}".formatted(
				task.get("now").get("performance").asString(), Hundredths.decimal(marks.first()),
				Hundredths.decimal(marks.second()));
	}

	private int mark() {
		return CardMarks.STEP * (35 + this.random.nextInt(24));
	}

	private void keep(int segment, String team, int judge, CardMarks marks) {
		this.segments.get(segment).computeIfAbsent(team, (key) -> new HashMap<>()).put(judge, marks);
	}

	@Override
	public String kept(String sent) {
		JsonNode card = JsonMapper.shared().readTree(sent);
		return card.get("performance").asString() + " " + card.get("sequence").asInt() + " "
				+ hundredths(card.get("first")) + " " + hundredths(card.get("second"));
	}

	private static int hundredths(JsonNode mark) {
		return mark.decimalValue().movePointRight(2).intValueExact();
	}

	@Override
	public Map<String, String> correct(int segment, String team, int judge) {
		CardMarks marks = new CardMarks(mark(), mark());
		while (marks.equals(this.segments.get(segment).get(team).get(judge))) {
			marks = new CardMarks(mark(), mark());
		}
		keep(segment, team, judge, marks);
		return Map.of("first", Hundredths.decimal(marks.first()).toString(), "second",
				Hundredths.decimal(marks.second()).toString());
	}

	@Override
	public void forget(int segment, String team) {
		this.segments.get(segment).remove(team);
	}

	@Override
	public Map<String, Integer> places(int segment) {
		SegmentKind kind = (segment == 0) ? SegmentKind.SHORT : SegmentKind.FREE;
		List<EntryCards> skated = new ArrayList<>();
		this.segments.get(segment).forEach((team, cards) -> {
			List<CardMarks> inOrder = cards.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).toList();
			skated.add(EntryCards.skated(team, inOrder));
		});
		Map<String, Integer> places = new HashMap<>();
		PlacementTabulation.ofCards(this.oneByOne ? PlacementRules.oneByOne(kind) : PlacementRules.majority(kind), skated)
			.rows()
			.forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

	@Override
	public Map<String, Integer> places() {
		Map<String, Integer> first = places(0);
		Map<String, Integer> second = places(1);
		Map<String, Integer> places = new HashMap<>();
		Combination.combine(CombinationRules.ofFactors(50, 100),
				second.keySet().stream().map((team) -> EntryPlaces.of(team, first.get(team), second.get(team))).toList())
			.rows()
			.forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

}
