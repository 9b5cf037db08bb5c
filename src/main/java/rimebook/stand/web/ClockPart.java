package rimebook.stand.web;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.clock.ClockView;
import rimebook.clock.InterruptionCause;
import rimebook.pages.RinkClock;
import rimebook.performances.Reskates;
import rimebook.stand.StandView;
import rimebook.wording.Sentence;

/**
 * The clock of the performance on the ice. Nothing in it changes with the passing of
 * time: what runs is given by the moment since which it runs.
 *
 * @param log every touch, oldest first
 * @param proposals what to do about what the clock found
 */
record ClockPart(Attempt attempt, Dial dial, Interruption interruption, Undoing undoing, List<ClockRow> log,
		List<ClockProposal> proposals) implements LivePart {

	/**
	 * Until then deficient music is a reason to begin anew: ISU rule 551 as of May 2011
	 * and ISU Referees Handbook, Synchronized Skating, 2020.
	 */
	private static final int EARLY = 30;

	static final ClockPart NONE = new ClockPart(new Attempt("", 1, null),
			new Dial(ClockView.ClockState.WAITING, ClockFace.BLANK, new ClockView.ProgrammeWindow(0, 0, 0)),
			new Interruption(null, null, false, false), new Undoing(null, List.of()), List.of(), List.of());

	static ClockPart of(StandView.Now onIce, List<Sentence> along, List<ClockProposal> proposals, RinkClock rink) {
		ClockView clock = onIce.clock();
		ClockView.Interruption pause = clock.pause();
		return new ClockPart(
				new Attempt(
						onIce.row().performance().id().toString(), clock.attempt().run(), clock.attempt().marking()),
				new Dial(clock.state(), face(clock), clock.window()),
				new Interruption((pause != null) ? ClockFace.runningSince(pause.from()) : null,
						(pause != null) ? pause.cause() : null, clock.hasContinued(), isEarly(clock, pause)),
				new Undoing(clock.last(), along), ClockRow.of(clock.log(), rink), proposals);
	}

	private static ClockFace face(ClockView clock) {
		return switch (clock.state()) {
			case WAITING -> (clock.times().calledAt() != null && clock.attempt().run() == 1)
					? ClockFace.runningSince(clock.times().calledAt()) : ClockFace.BLANK;
			case RUNNING -> ClockFace.runningSince(clock.countsFrom());
			case INTERRUPTED, STOPPED -> ClockFace.standing(clock.skated(Instant.EPOCH));
		};
	}

	private static boolean isEarly(ClockView clock, ClockView.@Nullable Interruption pause) {
		return pause != null && pause.cause() == InterruptionCause.MUSIC
				&& clock.skated(pause.from()).toSeconds() <= EARLY;
	}

	/** How often it was touched, to be given back with every act. */
	public int touches() {
		return this.log.size();
	}

	/** The state in small letters, as the style sheet and the texts name it. */
	public String mood() {
		return this.dial.state().name().toLowerCase(Locale.ROOT);
	}

	/** Tell whether the time since the call is shown. */
	public boolean isSinceCall() {
		return this.dial.state() == ClockView.ClockState.WAITING && this.attempt.run() == 1;
	}

	/** How far the skated time is outside at that moment; empty inside. */
	public String outside(Instant now) {
		int skated = this.dial.face().seconds(now);
		int outside = this.dial.window().over(skated) + this.dial.window().lacking(skated);
		return (outside > 0) ? ClockFace.words(outside) : "";
	}

	/** Tell whether the team can wait while others skate. */
	public boolean canWait() {
		return this.dial.state() == ClockView.ClockState.INTERRUPTED
				|| (this.dial.state() == ClockView.ClockState.WAITING && this.attempt.run() > 1);
	}

	/** The causes from which an interruption is chosen. */
	public InterruptionCause[] causes() {
		return InterruptionCause.values();
	}

	/** What the judges can be told to mark in a re-skate. */
	public Reskates.Marking[] markings() {
		return Reskates.Marking.values();
	}

	/** The length asked for, as "4:00". */
	public String length() {
		return ClockFace.words(this.dial.window().seconds());
	}

	/** The shortest programme inside the time. */
	public String least() {
		return ClockFace.words(this.dial.window().least());
	}

	/** The longest programme inside the time. */
	public String most() {
		return ClockFace.words(this.dial.window().most());
	}

	/** The limit of the interruption that goes on, as "3:00". */
	public String limit() {
		return (this.interruption.cause() != null) ? ClockFace.words(this.interruption.cause().limit()) : "";
	}

	/**
	 * A touch of the clock with its time in the rink.
	 *
	 * @param counts whether it counts: it was not taken back and takes nothing back
	 */
	record ClockRow(ClockView.Tap tap, String time, boolean counts) {

		static List<ClockRow> of(List<ClockView.Tap> log, RinkClock rink) {
			Set<ClockView.Tap> counting = counting(log);
			return log.stream()
				.map((tap) -> new ClockRow(tap, rink.time(tap.noted().notedAt()), counting.contains(tap)))
				.toList();
		}

		private static Set<ClockView.Tap> counting(List<ClockView.Tap> log) {
			Deque<ClockView.Tap> counting = new ArrayDeque<>();
			for (ClockView.Tap tap : log) {
				if (tap.act() == ClockView.ClockAct.TAKE_BACK) {
					counting.pollLast();
				}
				else {
					counting.addLast(tap);
				}
			}
			return new HashSet<>(counting);
		}

	}

	/** Which run of which performance it is. */
	record Attempt(String performance, int run, Reskates.@Nullable Marking marking) {
	}

	/**
	 * What the clock shows.
	 *
	 * @param face the time of the programme, or before the start the time since the call
	 */
	record Dial(ClockView.ClockState state, ClockFace face, ClockView.ProgrammeWindow window) {
	}

	/**
	 * What the referee has to know of an interruption.
	 *
	 * @param pause how long the interruption lasts, {@code null} without one
	 * @param cause why it is interrupted, {@code null} without one
	 * @param early whether so little was skated that deficient music can be reported
	 */
	record Interruption(@Nullable ClockFace pause, @Nullable InterruptionCause cause, boolean continued,
			boolean early) {
	}

	/**
	 * What can be taken back.
	 *
	 * @param last the act, {@code null} for nothing
	 * @param along what goes along when that is taken back, in words
	 */
	record Undoing(ClockView.@Nullable ClockAct last, List<Sentence> along) {
	}

}
