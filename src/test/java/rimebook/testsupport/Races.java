package rimebook.testsupport;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;

import rimebook.shared.RimebookException;

/**
 * People who act at the same moment, as often as {@link #ROUNDS} says.
 */
public final class Races {

	/**
	 * How often each race is run: 20 times, or as the system property
	 * {@code rimebook.races} says.
	 */
	public static final int ROUNDS = Integer.getInteger("rimebook.races", 20);

	private static final int MOST_TEAMS = 50;

	private int heats;

	/** Let both act at the same moment; returns what each gave. */
	public static <T> List<T> both(Callable<? extends T> first, Callable<? extends T> second) throws Exception {
		CyclicBarrier start = new CyclicBarrier(2);
		return run(List.of(after(start::await, first), after(start::await, second)));
	}

	/** Let so many do the same at the same moment; returns what each gave. */
	public static <T> List<T> all(int people, Callable<? extends T> act) throws Exception {
		CyclicBarrier start = new CyclicBarrier(people);
		return run(Stream.generate(() -> Races.<T>after(start::await, act)).limit(people).toList());
	}

	/**
	 * Let both act at the same moment, and every other time one only once the other has
	 * ended: then every race is also seen to end either way, whatever the machine.
	 */
	public Ending race(Act first, Act second) throws Exception {
		this.heats++;
		if (this.heats % 4 == 1) {
			Optional<RimebookException> one = attempt(first).call();
			return new Ending(one, attempt(second).call());
		}
		if (this.heats % 4 == 3) {
			Optional<RimebookException> other = attempt(second).call();
			return new Ending(attempt(first).call(), other);
		}
		List<Optional<RimebookException>> endings = both(attempt(first), attempt(second));
		return new Ending(endings.get(0), endings.get(1));
	}

	/**
	 * Open the first segments of competitions that have, in all, a team for each round.
	 */
	public static List<SmallCompetition> days(ApplicationContext context, int judges) {
		List<SmallCompetition> days = new ArrayList<>();
		for (int left = ROUNDS; left > 0; left -= MOST_TEAMS) {
			SmallCompetition day = SmallCompetition.running(context, Math.min(left, MOST_TEAMS), judges);
			day.open(1);
			days.add(day);
		}
		return days;
	}

	/** Gives the refusal, nothing when it was done; anything else fails the test. */
	private static Callable<Optional<RimebookException>> attempt(Act act) {
		return () -> {
			try {
				act.run();
				return Optional.empty();
			}
			catch (RimebookException ex) {
				return Optional.of(ex);
			}
		};
	}

	private static <T> Callable<T> after(Callable<?> signal, Callable<? extends T> act) {
		return () -> {
			signal.call();
			return act.call();
		};
	}

	private static <T> List<T> run(List<Callable<T>> acts) throws Exception {
		List<FutureTask<T>> running = acts.stream().map(FutureTask::new).toList();
		running.forEach((task) -> new Thread(task, "race").start());
		List<T> given = new ArrayList<>();
		for (FutureTask<T> task : running) {
			given.add(ended(task));
		}
		return given;
	}

	private static <T> T ended(FutureTask<T> task) throws Exception {
		try {
			return task.get();
		}
		catch (ExecutionException ex) {
			throw new AssertionError("A race ended in what is no refusal", ex.getCause());
		}
	}

	/** What somebody does; refused if it throws what the service refuses with. */
	@FunctionalInterface
	public interface Act {

		/** Do it. */
		void run() throws Exception;

	}

	/** How a race ended: the refusal of each who was refused. */
	public static final class Ending {

		private final @Nullable RimebookException first;

		private final @Nullable RimebookException second;

		private Ending(Optional<RimebookException> first, Optional<RimebookException> second) {
			this.first = first.orElse(null);
			this.second = second.orElse(null);
		}

		/** Why the first was refused; null if it was done. */
		public @Nullable RimebookException first() {
			return this.first;
		}

		/** Why the second was refused; null if it was done. */
		public @Nullable RimebookException second() {
			return this.second;
		}

		/** How many of the two were done. */
		public int done() {
			return 2 - refusals().size();
		}

		/** Why those were refused who were. */
		public List<RimebookException> refusals() {
			return Stream.of(this.first, this.second).filter(Objects::nonNull).toList();
		}

	}

}
