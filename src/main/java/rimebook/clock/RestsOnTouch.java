package rimebook.clock;

import java.time.Instant;
import java.util.List;
import java.util.Set;

import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** What is done because of what the clock found, and goes with the touch it rests on. */
public interface RestsOnTouch {

	/** Name what rests on these touches; empty for nothing. */
	List<Sentence> words(PerformanceView performance, Set<Instant> touches);

	/** Take all of it back. */
	void takeBack(PerformanceView performance, Set<Instant> touches, Actor actor);

}
