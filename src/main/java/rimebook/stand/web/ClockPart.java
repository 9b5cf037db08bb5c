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
 * @param touches to be given back with every act
 * @param face the time of the programme, or before the start the time since the call
 * @param pause how long the interruption lasts, {@code null} without one
 * @param cause why it is interrupted, {@code null} without one
 * @param early whether so little was skated that deficient music can be reported
 * @param last what can be taken back, {@code null} for nothing
 * @param along what goes along when that is taken back, in words
 * @param proposals what to do about what the clock found
 */
record ClockPart(String performance, int touches, ClockView.ClockState state, int run,
		Reskates.@Nullable Marking marking, ClockFace face, @Nullable ClockFace pause,
		@Nullable InterruptionCause cause, boolean continued, boolean early, ClockView.@Nullable ClockAct last,
		List<Sentence> along, ClockView.ProgrammeWindow window, List<ClockRow> log,
		List<ClockProposal> proposals) implements LivePart {

	/** Deficient music is reported within the first half minute. */
	/**
	 * Until then deficient music is a reason to begin anew: ISU rule 551 as of May 2011
	 * and ISU Referees Handbook, Synchronized Skating, 2020.
	 */
	private static final int EARLY = 30;

	static final ClockPart NONE = new ClockPart("", 0, ClockView.ClockState.WAITING, 1, null, ClockFace.BLANK, null,
			null, false, false, null, List.of(), new ClockView.ProgrammeWindow(0, 0, 0), List.of(), List.of());

	static ClockPart of(StandView.Now onIce, List<Sentence> along, List<ClockProposal> proposals, RinkClock rink) {
		ClockView clock = onIce.clock();
		ClockView.Interruption pause = clock.pause();
		return new ClockPart(onIce.row().performance().id().toString(), clock.touches(), clock.state(),
				clock.attempt().run(), clock.attempt().marking(), face(clock),
				(pause != null) ? ClockFace.runningSince(pause.from()) : null, (pause != null) ? pause.cause() : null,
				clock.hasContinued(), isEarly(clock, pause), clock.last(), along, clock.window(),
				ClockRow.of(clock.log(), rink), proposals);
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

	/** The state in small letters, as the style sheet and the texts name it. */
	public String mood() {
		return this.state.name().toLowerCase(Locale.ROOT);
	}

	/** Tell whether the time since the call is shown. */
	public boolean isSinceCall() {
		return this.state == ClockView.ClockState.WAITING && this.run == 1;
	}

	/** How far the skated time is outside at that moment; empty inside. */
	public String outside(Instant now) {
		int skated = this.face.seconds(now);
		int outside = this.window.over(skated) + this.window.lacking(skated);
		return (outside > 0) ? ClockFace.words(outside) : "";
	}

	/** Tell whether the team can wait while others skate. */
	public boolean canWait() {
		return this.state == ClockView.ClockState.INTERRUPTED
				|| (this.state == ClockView.ClockState.WAITING && this.run > 1);
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
		return ClockFace.words(this.window.seconds());
	}

	/** The shortest programme inside the time. */
	public String least() {
		return ClockFace.words(this.window.least());
	}

	/** The longest programme inside the time. */
	public String most() {
		return ClockFace.words(this.window.most());
	}

	/** The limit of the interruption that goes on, as "3:00". */
	public String limit() {
		return (this.cause != null) ? ClockFace.words(this.cause.limit()) : "";
	}

	/**
	 * A touch of the clock with its time in the rink.
	 *
	 * @param counts whether it counts: it was not taken back and takes nothing back
	 */
	record ClockRow(ClockView.ClockAct act, @Nullable InterruptionCause cause, Reskates.@Nullable Marking marking,
			String words, String time, String notedBy, boolean counts) {

		static List<ClockRow> of(List<ClockView.Tap> log, RinkClock rink) {
			Set<ClockView.Tap> counting = counting(log);
			return log.stream()
				.map((tap) -> new ClockRow(tap.act(), tap.cause(), tap.marking(), tap.words(),
						rink.time(tap.noted().notedAt()), tap.noted().notedBy(), counting.contains(tap)))
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

}
