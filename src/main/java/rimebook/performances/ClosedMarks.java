package rimebook.performances;

/** The marks of a performance that are closed; each way of judging has its own. */
public sealed interface ClosedMarks permits PanelMarks, PointsSheet {

}
