package rimebook.performances;

import rimebook.shared.Actor;

/** Where the panel is told what it has to mark otherwise than it would. */
public interface PanelNotices {

	/** Tell the panel of a performance, in words. */
	void tell(PerformanceId performance, String words, Actor actor);

}
