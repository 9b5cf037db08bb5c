package rimebook.stand.web;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.clock.ClockAct;
import rimebook.clock.ClockTapView;
import rimebook.clock.InterruptionCause;
import rimebook.pages.RinkClock;
import rimebook.performances.ReskateMarking;

/**
 * A touch of the clock with its time in the rink.
 *
 * @param counts whether it counts: it was not taken back and takes nothing back
 */
record ClockRow(ClockAct act, @Nullable InterruptionCause cause, @Nullable ReskateMarking marking, String words,
		String time, String notedBy, boolean counts) {

	static List<ClockRow> of(List<ClockTapView> log, RinkClock rink) {
		Set<ClockTapView> counting = counting(log);
		return log.stream()
			.map((tap) -> new ClockRow(tap.act(), tap.cause(), tap.marking(), tap.words(), rink.time(tap.notedAt()),
					tap.notedBy(), counting.contains(tap)))
			.toList();
	}

	private static Set<ClockTapView> counting(List<ClockTapView> log) {
		Deque<ClockTapView> counting = new ArrayDeque<>();
		for (ClockTapView tap : log) {
			if (tap.act() == ClockAct.TAKE_BACK) {
				counting.pollLast();
			}
			else {
				counting.addLast(tap);
			}
		}
		return new HashSet<>(counting);
	}

}
