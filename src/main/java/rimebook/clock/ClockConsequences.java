package rimebook.clock;

import java.time.Instant;
import java.util.List;
import java.util.Set;

import org.springframework.stereotype.Component;

import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** All that was done because of what the clock found: it goes with the touch. */
@Component
class ClockConsequences {

	private final List<RestsOnTouch> all;

	ClockConsequences(List<RestsOnTouch> all) {
		this.all = all;
	}

	/** Name what rests on these touches, deductions first; empty for nothing. */
	List<Sentence> words(PerformanceView performance, Set<Instant> touches) {
		return touches.isEmpty() ? List.of()
				: this.all.stream().flatMap((each) -> each.words(performance, touches).stream()).toList();
	}

	/**
	 * Take it back.
	 * @param asked how many of them whoever takes the touch back was asked about
	 * @throws rimebook.shared.ConflictException {@code clock-takes-along} if there are
	 * more or fewer
	 */
	void takeBack(PerformanceView performance, Set<Instant> touches, int asked, Actor actor) {
		List<Sentence> along = words(performance, touches);
		if (along.size() != asked) {
			throw ClockRefusals.takesAlong(performance, along);
		}
		if (!along.isEmpty()) {
			this.all.forEach((each) -> each.takeBack(performance, touches, actor));
		}
	}

}
