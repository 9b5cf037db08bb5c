package rimebook.rehearsal;

import java.io.IOException;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

import javax.sql.DataSource;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.archive.ArchiveRefusal;
import rimebook.archive.ArchiveWriting;
import rimebook.archive.Variant;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * Holds one rehearsal at a time beside the real service. Of the real database it only
 * reads; what it writes there are two lines of the record, that a rehearsal was begun and
 * that it was deleted. Everything slow is done on a thread of its own.
 */
@Service
@Profile("!" + RehearsalMark.PROFILE)
@EnableConfigurationProperties(RehearsalSettings.class)
class Rehearsals implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(Rehearsals.class);

	private static final String COMPETITION = "competition";

	private static final long PATIENCE = 25;

	/** Milliseconds from one look at the clock to the next. */
	private static final long LOOK = 60_000;

	private final DataSource database;

	private final Acts acts;

	private final TransactionTemplate transaction;

	private final RehearsalSettings settings;

	private final RehearsalStart processes;

	private final SecureRandom random;

	private final ScheduledExecutorService thread = thread();

	private final Competitions competitions;

	private volatile boolean running;

	private volatile @Nullable Rehearsal current;

	private volatile @Nullable RehearsalProcess process;

	Rehearsals(DataSource database, Acts acts, TransactionTemplate transaction, RehearsalSettings settings,
			RehearsalStart processes, SecureRandom random, Competitions competitions) {
		this.database = database;
		this.acts = acts;
		this.transaction = transaction;
		this.settings = settings;
		this.processes = processes;
		this.random = random;
		this.competitions = competitions;
	}

	/** What is only due in hours keeps no service from stopping. */
	private static ScheduledExecutorService thread() {
		ScheduledThreadPoolExecutor executor = new ScheduledThreadPoolExecutor(1, (work) -> {
			Thread thread = new Thread(work, "rehearsal");
			thread.setDaemon(true);
			return thread;
		});
		executor.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
		return executor;
	}

	/**
	 * The one there is, or the last one since the service started; {@code null} before.
	 */
	@Nullable Rehearsal current() {
		return this.current;
	}

	/** Megabytes of memory that this machine lacks for one; 0 where there is enough. */
	long lacksMemory() {
		return Math.max(0, this.settings.needed() - FreeMemory.megabytes());
	}

	RehearsalSettings settings() {
		return this.settings;
	}

	/** What a service that was killed left behind is deleted as soon as there is one. */
	@Override
	public void start() {
		this.running = true;
		this.thread.execute(() -> {
			try {
				RehearsalFolder.orphans().forEach(this::clear);
			}
			catch (IOException ex) {
				log.warn("What rehearsals may have left behind could not be looked for", ex);
			}
		});
	}

	private void clear(RehearsalFolder orphan) {
		Optional<CompetitionId> ours = orphan.competition().map(CompetitionId::new).filter(this::isHere);
		try {
			orphan.clear();
			log.warn("A rehearsal whose service had ended was stopped, and " + orphan.path() + " deleted");
			ours.ifPresent(
					(id) -> note(id, Actor.system(), "competition.rehearsal-ended", "its service had ended; deleted"));
		}
		catch (IOException ex) {
			log.warn("A rehearsal was left behind in " + orphan.path() + " and could not be deleted", ex);
		}
	}

	/** Another service of this machine may have begun it. */
	private boolean isHere(CompetitionId id) {
		return this.competitions.all().stream().anyMatch((known) -> known.id().equals(id));
	}

	/**
	 * Begin one.
	 * @throws ConflictException {@code rehearsal-runs} while there is one, or
	 * {@code rehearsal-memory} if this machine has too little left
	 */
	synchronized void begin(CompetitionView competition, Actor actor) {
		Rehearsal there = this.current;
		if (there != null && !there.isOver()) {
			throw new ConflictException("rehearsal-runs", Sentence.of("rehearsal.runs", there.name()));
		}
		if (lacksMemory() > 0) {
			throw new ConflictException("rehearsal-memory",
					Sentence.of("rehearsal.memory", this.settings.needed(), (int) FreeMemory.megabytes()));
		}
		Rehearsal begun = Rehearsal.of(competition.id(), competition.name(),
				new Rehearsal.Begun(actor, this.acts.now(), Passwords.random(this.random)));
		note(begun.competition(), actor, "competition.rehearsal-begun", "on a copy, beside the real service");
		this.current = begun;
		this.thread.execute(() -> start(begun));
	}

	private void start(Rehearsal begun) {
		RehearsalFolder folder = null;
		try {
			folder = RehearsalFolder.make();
			UUID competition = begun.competition().value();
			folder.note(competition, 0);
			copy(begun.competition(), folder);
			this.current = begun.isAt(Rehearsal.Stage.STARTING);
			RehearsalProcess started = this.processes.start(folder, competition, begun.begun().password());
			this.process = started;
			int answers = started.ready().join();
			this.current = begun.answersAt(answers);
			started.gone().thenRunAsync(() -> ended(started), this.thread);
			endAfterLongest(started, begun.begun().at().plus(this.settings.longest()));
		}
		catch (ArchiveRefusal | IOException | SQLException | CompletionException ex) {
			log.warn("A rehearsal did not come up: " + ex.getMessage() + lastWords());
			over(folder, begun.failed("rehearsal.failed.start"), Actor.system());
		}
		catch (RuntimeException | Error ex) {
			// Memory may be short, and nobody would ever hear that nothing comes.
			log.warn("A rehearsal did not come up", ex);
			over(folder, begun.failed("rehearsal.failed.start"), Actor.system());
		}
	}

	private String lastWords() {
		RehearsalProcess last = this.process;
		return (last != null) ? "\n" + String.join("\n", last.lastWords()) : "";
	}

	private void copy(CompetitionId competition, RehearsalFolder folder) throws IOException, SQLException {
		try (Connection connection = this.database.getConnection()) {
			ArchiveWriting.write(connection,
					new ArchiveWriting.Order(competition.toString(), Variant.WHOLE,
							this.acts.now().truncatedTo(ChronoUnit.MILLIS), List.of()),
					folder.archive(), ArchiveWriting.Progress.UNSEEN);
		}
	}

	/** The process ended without being asked to. */
	private void ended(RehearsalProcess gone) {
		Rehearsal there = this.current;
		if (this.process == gone && there != null && !there.isOver()) {
			log.warn("The rehearsal ended by itself" + lastWords());
			over(gone.folder(), there.failed("rehearsal.failed.ended"), Actor.system());
		}
	}

	/** By the clock on the wall: a laptop that sleeps over night counts no hours. */
	private void endAfterLongest(RehearsalProcess old, Instant end) {
		if (this.process == old) {
			long left = Duration.between(this.acts.now(), end).toMillis();
			if (left > 0) {
				this.thread.schedule(() -> endAfterLongest(old, end), Math.min(left, LOOK), TimeUnit.MILLISECONDS);
			}
			else {
				delete(Actor.system());
			}
		}
	}

	/**
	 * Stop it and delete everything that it had; nothing to do where there is none, or
	 * where somebody else was faster.
	 */
	void end(Actor actor) {
		synchronized (this) {
			Rehearsal there = this.current;
			if (there == null || there.stage() != Rehearsal.Stage.RUNNING) {
				return;
			}
			this.current = there.isAt(Rehearsal.Stage.ENDING);
		}
		this.thread.execute(() -> delete(actor));
	}

	private void delete(Actor actor) {
		Rehearsal there = this.current;
		RehearsalProcess last = this.process;
		if (there != null && !there.isOver() && last != null) {
			over(last.folder(), there.isAt(Rehearsal.Stage.DELETED), actor);
		}
	}

	/** Say so only once nothing is left. */
	private void over(@Nullable RehearsalFolder folder, Rehearsal over, Actor actor) {
		Rehearsal result = over;
		String said = (over.stage() == Rehearsal.Stage.FAILED) ? "came to an end by itself; deleted"
				: "stopped and deleted";
		RehearsalProcess last = this.process;
		this.process = null;
		try {
			if (last != null) {
				last.end();
			}
			if (folder != null) {
				folder.delete();
			}
		}
		catch (IOException ex) {
			log.error("Not everything of a rehearsal could be deleted", ex);
			result = over.failed("rehearsal.failed.delete");
			said = "stopped; not all of its files could be deleted";
		}
		try {
			note(over.competition(), actor, "competition.rehearsal-ended", said);
		}
		finally {
			this.current = result;
		}
	}

	private void note(CompetitionId competition, Actor actor, String action, String what) {
		this.transaction.executeWithoutResult((status) -> this.acts
			.publish(AuditedChange.of(actor, COMPETITION, competition.value(), action).to(what)));
	}

	/** Before the database goes, since it is told that the rehearsal is gone. */
	@Override
	public void stop() {
		this.running = false;
		RehearsalProcess last = this.process;
		if (last != null) {
			// One that is just starting is not waited for.
			last.kill();
		}
		this.thread.execute(() -> delete(Actor.system()));
		this.thread.shutdown();
		try {
			this.thread.awaitTermination(PATIENCE, TimeUnit.SECONDS);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public boolean isRunning() {
		return this.running;
	}

	/** After the server, so that nobody begins another one. */
	@Override
	public int getPhase() {
		return 0;
	}

	/** A service that rests does not give up its rehearsal. */
	@Override
	public boolean isPauseable() {
		return false;
	}

}
