package rimebook.rehearsal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;

import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.PointsTasks;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.SegmentRules;

/**
 * A performance that is made up by the rules of its segment: the planned elements, or
 * where none are planned some that the rules know, and marks as a panel might give them.
 * The same team, judge and segment always get the same.
 */
class InventedScript implements PointsScript {

	private static final long SEED = 20270214;

	private static final int ELEMENTS = 6;

	private static final int QUARTER = 25;

	private final List<String> planned;

	private final SegmentRules rules;

	private final String segment;

	InventedScript(List<String> planned, SegmentRules rules, String segment) {
		this.planned = planned;
		this.rules = rules;
		this.segment = segment;
	}

	@Override
	public List<ElementCalls.CallElements.Call> calls(String team) {
		List<String> known = this.planned.stream()
			.filter((code) -> this.rules.values().find(code).isPresent())
			.toList();
		return (known.isEmpty() ? some(team) : known).stream()
			.map((code) -> new ElementCalls.CallElements.Call(null, code, JudgedElement.ElementWorth.COUNTS, null))
			.toList();
	}

	private List<String> some(String team) {
		List<String> all = this.rules.values().values().keySet().stream().sorted().toList();
		return random(team).ints(0, all.size())
			.distinct()
			.limit(Math.min(ELEMENTS, all.size()))
			.mapToObj(all::get)
			.toList();
	}

	@Override
	public List<DeductionNotes.NoteDeductions.Item> deductions(String team) {
		return List.of();
	}

	@Override
	public Map<UUID, Integer> grades(String team, int judge, List<PointsTasks.PointsTask.Element> called) {
		Random accident = random(team + judge);
		int most = this.rules.values().grades().most();
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		called.stream()
			.filter(PointsTasks.PointsTask.Element::counts)
			.forEach((element) -> grades.put(element.id(),
					(int) Math.max(-most, Math.min(most, Math.round(strength(team) * 2 + accident.nextGaussian())))));
		return grades;
	}

	@Override
	public Map<String, Integer> components(String team, int judge) {
		Random accident = random("components" + team + judge);
		Map<String, Integer> marks = new LinkedHashMap<>();
		this.rules.components()
			.forEach((component) -> marks.put(component.name(), QUARTER
					* (int) Math.max(1, Math.min(40, Math.round(24 + strength(team) * 6 + accident.nextGaussian())))));
		return marks;
	}

	private double strength(String team) {
		return random(team).nextGaussian() / 2;
	}

	private Random random(String of) {
		return new Random(SEED * 31 + (of + this.segment).hashCode());
	}

}
