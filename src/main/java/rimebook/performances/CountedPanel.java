package rimebook.performances;

import java.util.List;

/**
 * Whose cards make the standing of a segment.
 *
 * @param judges the numbers of the judges' seats that count, ascending; a substitute who
 * took over a seat counts under its number
 * @param notes one sentence a difference from the panel as it was drawn; empty for none
 */
public record CountedPanel(List<Integer> judges, List<String> notes) {

	public CountedPanel {
		judges = List.copyOf(judges);
		notes = List.copyOf(notes);
	}

	/** Tell whether every judge's own card of every team counts. */
	public boolean isAsDrawn() {
		return this.notes.isEmpty();
	}

}
