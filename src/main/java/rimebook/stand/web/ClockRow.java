package rimebook.stand.web;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.clock.ClockAct;
import rimebook.clock.ClockView;
import rimebook.clock.InterruptionCause;
import rimebook.pages.RinkClock;
import rimebook.performances.Reskates;

/**
 * A touch of the clock with its time in the rink.
 *
 * @param counts whether it counts: it was not taken back and takes nothing back
 */
record ClockRow(ClockAct act, @Nullable InterruptionCause cause, Reskates.@Nullable Marking marking, String words,
		String time, String notedBy, boolean counts) {

	static List<ClockRow> of(List<ClockView.Tap> log, RinkClock rink) {
		Set<ClockView.Tap> counting = counting(log);
		return log.stream()
			.map((tap) -> new ClockRow(tap.act(), tap.cause(), tap.marking(), tap.words(), rink.time(tap.notedAt()),
					tap.notedBy(), counting.contains(tap)))
			.toList();
	}

	private static Set<ClockView.Tap> counting(List<ClockView.Tap> log) {
		Deque<ClockView.Tap> counting = new ArrayDeque<>();
		for (ClockView.Tap tap : log) {
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
