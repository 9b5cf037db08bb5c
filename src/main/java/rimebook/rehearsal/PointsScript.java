package rimebook.rehearsal;

import java.util.List;
import java.util.Map;
import java.util.UUID;

import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.PointsTasks;

/** Invented performances that are judged by points. */
public interface PointsScript {

	/** The elements that are called for a team. */
	List<ElementCalls.CallElements.Call> calls(String team);

	/** What is taken off a team. */
	List<DeductionNotes.NoteDeductions.Item> deductions(String team);

	/** What a judge gives each element that counts, by its identity. */
	Map<UUID, Integer> grades(String team, int judge, List<PointsTasks.PointsTask.Element> called);

	/** What a judge gives each component, in hundredths, by its name. */
	Map<String, Integer> components(String team, int judge);

}
