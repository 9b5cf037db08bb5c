package rimebook.panels;

import java.util.List;
import java.util.Map;

import rimebook.shared.RimebookException;

/**
 * What came of seating several officials at once: either all of them sit, or none.
 *
 * @param seated the seats that were given, empty where something was refused
 * @param refused why, by the places that were refused
 */
public record SeatedPanel(List<SeatView> seated, Map<SeatPlace, RimebookException> refused) {

	public SeatedPanel {
		seated = List.copyOf(seated);
		refused = Map.copyOf(refused);
	}

}
