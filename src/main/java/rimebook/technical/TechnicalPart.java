package rimebook.technical;

import java.util.List;

import rimebook.points.TechnicalDesk;
import rimebook.rulings.QuestionView;

/**
 * A part of the technical desk that follows by itself: the page sends back the print of
 * what it shows, and gets only the parts whose print is another.
 */
sealed interface TechnicalPart {

	/** A short print of everything shown; the same on every node and after a restart. */
	default String print() {
		return Integer.toHexString(toString().hashCode());
	}

	/**
	 * The team on the ice, or the one whose cards were opened again.
	 *
	 * @param open whether the segment was opened
	 * @param next who comes next, empty for nobody
	 * @param rulings of the referee for the team in this segment
	 */
	record Ice(Skating skating, boolean open, String next, List<QuestionView> rulings) implements TechnicalPart {

		/**
		 * The team at hand.
		 *
		 * @param performance its identity, empty between two
		 * @param reopened whether its closed cards were opened again
		 */
		public record Skating(String performance, int number, String team, String club, boolean reopened) {
		}

	}

	/** The plan of the team on the ice. */
	record Plan(List<Line> lines) implements TechnicalPart {
	}

	/** A planned element with its code in words. */
	record Line(int number, String code, String name, TechnicalDesk.PlannedLine.State state) {

		/** Tell whether it is the one to take next. */
		public boolean isNext() {
			return this.state == TechnicalDesk.PlannedLine.State.NEXT;
		}

	}

	/**
	 * The called elements.
	 *
	 * @param controller who authorised it, empty while it is open
	 * @param reviews how many reviews are open
	 * @param late the deductions that the controller is to look at since they were
	 * changed after the list was authorised, empty for none
	 */
	record Called(Version version, List<TechnicalRow> rows, String controller, long reviews,
			String late) implements TechnicalPart {

		/** Tell whether the controller's word is there. */
		public boolean isAuthorised() {
			return !this.controller.isEmpty();
		}

		/** Tell whether the controller is asked to look at the deductions. */
		public boolean isLate() {
			return !this.late.isEmpty();
		}

		/**
		 * Which version of the called list it is.
		 *
		 * @param sequence the version of the list, 0 before the first
		 * @param by who made it, and at what time
		 */
		public record Version(int sequence, String by, String at) {
		}

	}

	/**
	 * The deductions.
	 *
	 * @param sequence the version of the list, 0 before the first
	 */
	record Deducted(int sequence, List<DeductedRow> rows) implements TechnicalPart {
	}

	/** One deduction as on the sheet, and who noted it. */
	record DeductedRow(String words, String by) {
	}

}
