package rimebook.rehearsal;

import java.util.List;

import rimebook.competition.SegmentId;
import rimebook.performances.PerformanceView;

/** What the simulated panel marks. */
public interface PanelPlan {

	/** The segments that are open or were, in the order in which they are marked. */
	List<SegmentId> segments();

	/** What was skated, as points judging sees it. */
	PointsScript script(PerformanceView performance);

}
