package rimebook.tabulation;

import java.util.List;

/** The figures that made a place in a segment. */
public sealed interface Figures permits MajorityFigures, OneByOneFigures {

	/**
	 * Return the figures in the order in which they are compared.
	 * @return the first difference between two teams decides, none means a shared place
	 */
	List<Measure> measures();

}
