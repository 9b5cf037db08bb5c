package rimebook.performances;

import java.util.List;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.JudgedElement;

/**
 * The marks of a performance that are closed; each way of judging has its own. The two
 * that this service knows are all there is to ask for; one that comes with a module of
 * its own has {@link Others}, which only that module reads.
 */
public sealed interface ClosedMarks {

	/** The closed marks of a further way of judging. */
	non-sealed interface Others extends ClosedMarks {

	}

	/**
	 * The cards of two marks that were closed.
	 *
	 * @param cards one a counting seat in the order of the seats
	 */
	record PanelMarks(List<CardMarks> cards) implements ClosedMarks {

		public PanelMarks {
			cards = List.copyOf(cards);
		}

	}

	/**
	 * Everything that the score of one performance is made of.
	 *
	 * @param elements as called, with the grade of each counting seat in the order of the
	 * seats
	 * @param components with the mark of each counting seat
	 * @param deductions with their points by the rule set
	 */
	record PointsSheet(List<JudgedElement> elements, List<JudgedComponent> components,
			List<DeductionRule.Deduction> deductions) implements ClosedMarks {

		public PointsSheet {
			elements = List.copyOf(elements);
			components = List.copyOf(components);
			deductions = List.copyOf(deductions);
		}

	}

}
