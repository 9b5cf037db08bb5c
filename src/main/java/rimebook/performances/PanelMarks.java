package rimebook.performances;

import java.util.List;

import rimebook.tabulation.CardMarks;

/**
 * The cards of two marks that were closed.
 *
 * @param cards one a counting seat in the order of the seats
 */
public record PanelMarks(List<CardMarks> cards) implements ClosedMarks {

	public PanelMarks {
		cards = List.copyOf(cards);
	}

}
