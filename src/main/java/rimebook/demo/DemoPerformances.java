package rimebook.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVRecord;

import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.PointsTasks;
import rimebook.rehearsal.PointsScript;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.Points;

/**
 * The invented performances of a segment judged by points: what was called, what each
 * judge gave, what was taken off.
 */
final class DemoPerformances implements PointsScript {

	private static final int JUDGES = 7;

	private final List<CSVRecord> elements;

	private final List<CSVRecord> components;

	private final List<CSVRecord> deductions;

	/**
	 * Read them.
	 * @param segment {@code short} or {@code free}
	 */
	DemoPerformances(String segment) {
		this.elements = DemoFiles.rows("senior-" + segment + "-elements.csv");
		this.components = DemoFiles.rows("senior-" + segment + "-components.csv");
		this.deductions = DemoFiles.rows("senior-" + segment + "-deductions.csv");
	}

	/** The elements that were called for a team. */
	@Override
	public List<ElementCalls.CallElements.Call> calls(String team) {
		return of(this.elements, team)
			.map((row) -> new ElementCalls.CallElements.Call(null, row.get("code"), JudgedElement.ElementWorth.COUNTS,
					null))
			.toList();
	}

	/**
	 * What a team means to skate: the elements as called, none downgraded. One that is
	 * late with everything has not written down the last of its free skating.
	 */
	String plan(String team) {
		List<String> codes = of(this.elements, team).map((row) -> row.get("code").replace("<", "")).toList();
		int written = (codes.size() == 10 && team.equals("Lantern Keepers")) ? 9 : codes.size();
		return String.join(" ", codes.subList(0, written));
	}

	/** What was taken off a team. */
	@Override
	public List<DeductionNotes.NoteDeductions.Item> deductions(String team) {
		return of(this.deductions, team)
			.map((row) -> new DeductionNotes.NoteDeductions.Item(row.get("item"), Integer.parseInt(row.get("count"))))
			.toList();
	}

	/**
	 * What a judge gave each element that counts, by its identity. Where others were
	 * called than the files say, their grade is that of the same number, else 0.
	 */
	@Override
	public Map<UUID, Integer> grades(String team, int judge, List<PointsTasks.PointsTask.Element> called) {
		List<Integer> given = of(this.elements, team).map((row) -> Integer.parseInt(row.get(column(judge)))).toList();
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		called.stream()
			.filter(PointsTasks.PointsTask.Element::counts)
			.forEach((element) -> grades.put(element.id(),
					(element.number() <= given.size()) ? given.get(element.number() - 1) : 0));
		return grades;
	}

	/** What a judge gave each component, in hundredths. */
	@Override
	public Map<String, Integer> components(String team, int judge) {
		Map<String, Integer> marks = new LinkedHashMap<>();
		of(this.components, team)
			.forEach((row) -> marks.put(row.get("component"), Points.parse(row.get(column(judge))).hundredths()));
		return marks;
	}

	/** A panel of another size repeats the judges of the files. */
	private static String column(int judge) {
		return "J" + ((judge - 1) % JUDGES + 1);
	}

	private static Stream<CSVRecord> of(List<CSVRecord> rows, String team) {
		return rows.stream().filter((row) -> row.get("entry").equals(team));
	}

}
