package rimebook.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.performances.Reskates;
import rimebook.wording.Sentence;

/**
 * The clock of a performance. It rests on the instants of its touches alone, so every
 * page, every node and a service that was started again read the same time from it. Times
 * are read in whole seconds, as a clock shows them: what has begun but is not full does
 * not count.
 *
 * @param times when the team was called, and what happened on the ice since
 * @param last the newest act that counts, which can be taken back, or {@code null}
 * @param log every touch, oldest first
 */
public record ClockView(ClockState state, Attempt attempt, Times times, @Nullable ClockAct last, ProgrammeWindow window,
		List<Tap> log) {

	/** The seconds from the announcement of the name to the first movement. */
	public static final int START_WITHIN = 60;

	/** The seconds that an interruption may last without counting as one. */
	public static final int UNCOUNTED_PAUSE = 10;

	public ClockView {
		log = List.copyOf(log);
	}

	/**
	 * One interruption.
	 *
	 * @param from the referee's signal, UTC
	 * @param to when the team went on, {@code null} while it has not
	 */
	public record Interruption(InterruptionCause cause, Instant from, @Nullable Instant to) {

		/** How long it lasted, or has lasted until now. */
		public Duration length(Instant now) {
			return Duration.between(this.from, (this.to != null) ? this.to : now);
		}

	}

	/** How often it was touched, to be given back with every act on it. */
	public int touches() {
		return this.log.size();
	}

	/** The skated time until now: the running time without interruptions. */
	public Duration skated(Instant now) {
		if (this.times.startedAt() == null) {
			return Duration.ZERO;
		}
		Instant end = (this.times.stoppedAt() != null) ? this.times.stoppedAt() : now;
		return this.times.interruptions()
			.stream()
			.map((pause) -> pause.length(now))
			.reduce(Duration.between(this.times.startedAt(), end), Duration::minus);
	}

	/**
	 * The moment from which the skated time counts as if it had never been interrupted:
	 * while the clock runs, the time since then is the skated time.
	 * @throws IllegalStateException before the start
	 */
	public Instant countsFrom() {
		if (this.times.startedAt() == null) {
			throw new IllegalStateException("The clock was not started.");
		}
		Instant from = this.times.startedAt();
		for (Interruption pause : this.times.interruptions()) {
			from = (pause.to() != null) ? from.plus(Duration.between(pause.from(), pause.to())) : from;
		}
		return from;
	}

	/** The interruption that goes on, or {@code null}. */
	public @Nullable Interruption pause() {
		return (this.state == ClockState.INTERRUPTED)
				? this.times.interruptions().get(this.times.interruptions().size() - 1) : null;
	}

	/** Tell whether the team went on once already after a cause of its own. */
	public boolean hasContinued() {
		return this.times.interruptions().stream().anyMatch((pause) -> pause.cause().isOwn() && pause.to() != null);
	}

	/** Tell whether the team can wait while others skate. */
	public boolean canWait() {
		return this.state == ClockState.INTERRUPTED || (this.state == ClockState.WAITING && this.attempt.run() > 1);
	}

	/** What may cost the team something, in the order in which it was known. */
	public List<ClockFinding> findings() {
		List<ClockFinding> findings = new ArrayList<>();
		if (this.attempt.run() == 1 && this.times.calledAt() != null && this.times.startedAt() != null) {
			int after = seconds(Duration.between(this.times.calledAt(), this.times.startedAt()));
			add(findings, ClockFinding.Fault.LATE_START, (after > START_WITHIN) ? after : 0, this.times.startedAt());
		}
		for (Interruption pause : this.times.interruptions()) {
			if (pause.cause().isOwn() && pause.to() != null) {
				int length = seconds(pause.length(pause.to()));
				add(findings, ClockFinding.Fault.INTERRUPTION, (length > UNCOUNTED_PAUSE) ? length : 0, pause.to());
			}
		}
		if (this.times.stoppedAt() != null) {
			int skated = seconds(skated(this.times.stoppedAt()));
			add(findings, ClockFinding.Fault.TOO_LONG, this.window.over(skated), this.times.stoppedAt());
			add(findings, ClockFinding.Fault.TOO_SHORT, this.window.lacking(skated), this.times.stoppedAt());
		}
		return findings;
	}

	/**
	 * The touches on which something was found that would not be if the newest act were
	 * taken back, each by its moment.
	 */
	Set<Instant> foundByLast() {
		if (this.last == null) {
			return Set.of();
		}
		List<Tap> touched = new ArrayList<>(this.log);
		touched.add(
				new Tap(touches() + 1, ClockAct.TAKE_BACK, null, null, "", new ClockView.Tap.Noted("", Instant.EPOCH)));
		Set<Instant> found = moments(findings());
		found.removeAll(
				moments(ClockReading.of(touched, this.times.calledAt(), this.attempt.skate(), this.window).findings()));
		return found;
	}

	private static Set<Instant> moments(List<ClockFinding> findings) {
		return findings.stream().map(ClockFinding::since).collect(Collectors.toCollection(HashSet::new));
	}

	private static void add(List<ClockFinding> findings, ClockFinding.Fault fault, int seconds, Instant since) {
		if (seconds > 0) {
			findings.add(new ClockFinding(fault, seconds, since));
		}
	}

	private static int seconds(Duration duration) {
		return (int) duration.toSeconds();
	}

	/**
	 * One touch of the clock.
	 *
	 * @param sequence 1 for the first touch of a performance
	 * @param cause why it was interrupted; {@code null} for other acts
	 * @param marking what is marked in a re-skate; {@code null} for other acts
	 * @param words the point from which the team goes on, or the act that was taken back;
	 * else empty
	 */
	public record Tap(int sequence, ClockAct act, @Nullable InterruptionCause cause, Reskates.@Nullable Marking marking,
			String words, Noted noted) {

		/**
		 * Who touched the clock, and when.
		 *
		 * @param notedAt when the service received it, UTC
		 */
		public record Noted(String notedBy, Instant notedAt) {
		}

	}

	/**
	 * How long a programme may be; both ends belong to it.
	 *
	 * @param seconds the length asked for
	 * @param longer how many seconds longer it may be
	 * @param shorter how many seconds shorter it may be; {@code null} where only the
	 * longest is limited
	 */
	public record ProgrammeWindow(int seconds, int longer, @Nullable Integer shorter) {

		/** The fewest seconds, 0 where only the longest is limited. */
		public int least() {
			return (this.shorter != null) ? Math.max(0, this.seconds - this.shorter) : 0;
		}

		/** The most seconds. */
		public int most() {
			return this.seconds + this.longer;
		}

		/** By how many seconds a time is too short; 0 for one that is not. */
		public int lacking(int skated) {
			return Math.max(0, least() - skated);
		}

		/** By how many seconds a time is too long; 0 for one that is not. */
		public int over(int skated) {
			return Math.max(0, skated - most());
		}

	}

	/** How the clock of a performance stands, and what can be done with it from there. */
	public enum ClockState {

		/** No skater has moved yet, or not since a re-skate was ordered. */
		WAITING,

		/** The programme is being skated. */
		RUNNING,

		/** Broken off at the referee's signal. */
		INTERRUPTED,

		/** The programme has ended. */
		STOPPED;

		/**
		 * Tell whether an act is possible; whether one can be taken back is told
		 * elsewhere.
		 */
		public boolean allows(ClockAct act) {
			return switch (act) {
				case START -> this == WAITING;
				case STOP -> this == RUNNING;
				case INTERRUPT -> isUnderWay();
				case RESUME -> this == INTERRUPTED;
				case RESKATE -> this == INTERRUPTED || this == STOPPED;
				case TAKE_BACK -> true;
			};
		}

		/** Tell whether the team is in the middle of its programme. */
		public boolean isUnderWay() {
			return this == RUNNING || this == INTERRUPTED;
		}

		Sentence spoken() {
			return Sentence.of("clock.state." + name().toLowerCase(Locale.ROOT));
		}

		/** As it stands on the record. */
		String words() {
			return spoken().english();
		}

	}

	/**
	 * What the clock shows that may cost a team something. It only points it out: the
	 * rulebook in force and the referee decide.
	 *
	 * @param seconds of {@link Fault#LATE_START} how long after the call, of a time how
	 * far outside the window, of an interruption how long
	 * @param since when it was known, UTC
	 */
	public record ClockFinding(Fault fault, int seconds, Instant since) {

		private static final int HALF_A_MINUTE = 30;

		/** What is at fault. */
		public enum Fault {

			/** The first movement came more than a minute after the call. */
			LATE_START,

			/** The team was interrupted by its own cause for more than ten seconds. */
			INTERRUPTION,

			/** The programme was longer than its window. */
			TOO_LONG,

			/** The programme was shorter than its window. */
			TOO_SHORT

		}

		/**
		 * Tell whether a touch of the clock is more likely at fault than the team: more
		 * than half a minute beyond what costs nothing (common practice).
		 */
		public boolean isDoubtful() {
			return beyond() > HALF_A_MINUTE;
		}

		private int beyond() {
			return switch (this.fault) {
				case LATE_START -> this.seconds - ClockView.START_WITHIN;
				case INTERRUPTION -> this.seconds - ClockView.UNCOUNTED_PAUSE;
				case TOO_LONG, TOO_SHORT -> this.seconds;
			};
		}

		/**
		 * In how many steps of that length the seconds fall, a begun one counting whole.
		 * @param step seconds, at least 1
		 */
		public int steps(int step) {
			return (this.seconds + step - 1) / step;
		}

	}

	/** What the referee does with the clock of a performance. */
	public enum ClockAct {

		/** The first skater moves: the time of the programme begins. */
		START("started"),

		/** The team has come to its complete stop: the time ends. */
		STOP("stopped"),

		/**
		 * The referee's signal to break off; the time stands still. While it does, the
		 * cause is another than was thought.
		 */
		INTERRUPT("interrupted"),

		/** The team goes on from the point of interruption; the time runs on. */
		RESUME("resumed"),

		/** The programme is skated again from its beginning; the time starts anew. */
		RESKATE("re-skate"),

		/** The newest act that counts was a slip and counts no longer. */
		TAKE_BACK("taken back");

		private final String words;

		ClockAct(String words) {
			this.words = words;
		}

		/** What cannot be done with the clock: "stopped". */
		Sentence spoken() {
			return Sentence.of("clock.act." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
		}

		/** In a word or two, for the record. */
		String words() {
			return this.words;
		}

	}

	/**
	 * Which run of the programme is skated.
	 *
	 * @param skate 1, and one more for each time that the whole programme is skated again
	 * @param run the same, and one more for each re-skate of which the beginning stays
	 * @param marking what the judges mark in this run; {@code null} in the first
	 */
	public record Attempt(int skate, int run, Reskates.@Nullable Marking marking) {
	}

	/**
	 * When a team was called, moved, paused and stopped.
	 *
	 * @param calledAt when the team was called, UTC
	 * @param startedAt the first movement of this run, or {@code null}
	 * @param stoppedAt the complete stop of this run, or {@code null}
	 * @param interruptions those of this run, oldest first
	 */
	public record Times(@Nullable Instant calledAt, @Nullable Instant startedAt, @Nullable Instant stoppedAt,
			List<Interruption> interruptions) {

		public Times {
			interruptions = List.copyOf(interruptions);
		}

	}

}
