package rimebook.standby;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.SmartLifecycle;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

import rimebook.audit.RecordAnchors;
import rimebook.shared.KeptFolder;
import rimebook.wording.Sentence;

/**
 * The one thread that writes to the second place, and how it stands with it. A place that
 * hangs keeps nobody waiting but this thread.
 */
@Component
class Copying implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(Copying.class);

	private final CopySettings settings;

	private final Clock clock;

	private final Optional<CopyMaker> maker;

	private volatile CopyState state;

	private @Nullable ScheduledExecutorService thread;

	Copying(CopySettings settings, JdbcTemplate jdbc, RecordTail tail, RecordAnchors anchors, ServiceLives lives,
			ObjectProvider<KeptFolder.Source> beside, Environment environment, Clock clock) {
		this.settings = settings;
		this.clock = clock;
		Optional<DatabaseFile> file = DatabaseFile.of(environment);
		this.maker = settings.place()
			.flatMap((place) -> file.map((database) -> new CopyMaker(new CopyFolder(place),
					new CopyMaker.Source(jdbc, tail, anchors, lives, database, folders(beside)), settings.every(),
					clock)));
		this.state = new CopyState(kind(settings, file), clock.instant(), null, why(settings, file));
	}

	private static List<KeptFolder> folders(ObjectProvider<KeptFolder.Source> beside) {
		return beside.orderedStream().flatMap((source) -> source.folder().stream()).toList();
	}

	private static CopyState.Kind kind(CopySettings settings, Optional<DatabaseFile> file) {
		if (settings.place().isEmpty()) {
			return settings.elsewhere() ? CopyState.Kind.ELSEWHERE : CopyState.Kind.NEVER_SET_UP;
		}
		return file.isPresent() ? CopyState.Kind.STARTING : CopyState.Kind.IMPOSSIBLE;
	}

	private static Sentence why(CopySettings settings, Optional<DatabaseFile> file) {
		if (settings.place().isEmpty()) {
			return settings.elsewhere() ? Sentence.NONE : Sentence.of("standby.never-set-up");
		}
		return file.isPresent() ? Sentence.NONE : Sentence.of("standby.impossible");
	}

	/** How it stands with the second place now. */
	CopyState state() {
		CopyState now = this.state.at(this.clock.instant());
		return (now.kind() == CopyState.Kind.KEPT)
				? new CopyState(now.kind(), now.since(), now.kept(), now.doubt().orElse(Sentence.NONE)) : now;
	}

	Optional<CopyFolder> folder() {
		return this.settings.place().map(CopyFolder::new);
	}

	/** Do what is due, and remember how it went. */
	void look() {
		this.maker.ifPresent(this::look);
	}

	private void look(CopyMaker maker) {
		CopyState before = this.state;
		try {
			CopyState.Kept kept = maker.look();
			Instant since = (before.kind() == CopyState.Kind.KEPT) ? before.since() : kept.until();
			this.state = new CopyState(CopyState.Kind.KEPT, since, kept, Sentence.NONE);
			if (before.kind() == CopyState.Kind.FAILING) {
				log.info("The second place is kept again");
			}
		}
		catch (IOException | RuntimeException ex) {
			fail(before, ex);
		}
	}

	private void fail(CopyState before, Exception ex) {
		boolean first = before.kind() != CopyState.Kind.FAILING;
		Sentence why = folder().map((folder) -> CopyFailure.of(ex, folder)).orElse(Sentence.NONE);
		if (first) {
			log.warn("Nothing is kept at the second place: " + why.english(), ex);
		}
		this.state = new CopyState(CopyState.Kind.FAILING, first ? this.clock.instant() : before.since(), before.kept(),
				why);
	}

	@Override
	public synchronized void start() {
		if (this.thread == null && this.maker.isPresent()) {
			this.maker.ifPresent((maker) -> maker.hurry(false));
			this.thread = Executors.newSingleThreadScheduledExecutor(Copying::thread);
			this.thread.scheduleWithFixedDelay(this::look, 0, this.settings.look().toMillis(), TimeUnit.MILLISECONDS);
		}
	}

	/** A last look: whoever stops the service has everything at the second place. */
	@Override
	public synchronized void stop() {
		if (this.thread != null) {
			this.thread.shutdown();
			this.maker.ifPresent((maker) -> maker.hurry(true));
			try {
				if (this.thread.awaitTermination(10, TimeUnit.SECONDS)) {
					look();
				}
			}
			catch (InterruptedException ex) {
				Thread.currentThread().interrupt();
			}
			this.thread = null;
		}
	}

	@Override
	public synchronized boolean isRunning() {
		return this.thread != null;
	}

	private static Thread thread(Runnable task) {
		Thread thread = new Thread(task, "second-place");
		thread.setDaemon(true);
		thread.setPriority(Thread.MIN_PRIORITY);
		return thread;
	}

}
