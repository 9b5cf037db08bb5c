package rimebook.performances;

/**
 * The marks of a performance that are closed; each way of judging has its own. The two
 * that this service knows are all there is to ask for; one that comes with a module of
 * its own has {@link Others}, which only that module reads.
 */
public sealed interface ClosedMarks permits PanelMarks, PointsSheet, ClosedMarks.Others {

	/** The closed marks of a further way of judging. */
	non-sealed interface Others extends ClosedMarks {

	}

}
