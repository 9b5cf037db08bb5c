package rimebook.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Service;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;

/**
 * Makes archives one after the other beside everything else, and keeps each for an hour.
 * They lie with the service that made them: another one on the same database knows
 * nothing of them, and after a restart whoever wants one asks again.
 */
@Service
class ArchiveJobs implements DisposableBean {

	/** How long a file is kept. */
	static final Duration KEPT = Duration.ofHours(1);

	/** How many earlier ones of the same kind; somebody may just be taking one. */
	private static final int KEPT_BESIDE = 2;

	private static final String WRONG = "Something went wrong; the log of the machine that Rimebook runs on says what.";

	private static final Log log = LogFactory.getLog(ArchiveJobs.class);

	private final ArchiveMaking making;

	private final Acts acts;

	private final List<ArchiveJob> jobs = new CopyOnWriteArrayList<>();

	/** Never interrupted: that would close a database of H2 under everybody. */
	private final ScheduledThreadPoolExecutor thread = new ScheduledThreadPoolExecutor(1, ArchiveJobs::thread);

	private volatile boolean stopping;

	ArchiveJobs(ArchiveMaking making, Acts acts) {
		this.making = making;
		this.acts = acts;
		this.thread.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
	}

	private static Thread thread(Runnable work) {
		Thread thread = new Thread(work, "archives");
		thread.setDaemon(true);
		return thread;
	}

	/** Those of a competition that are not gone yet, the newest first. */
	List<ArchiveJob> of(CompetitionId competition) {
		return this.jobs.stream()
			.filter((job) -> job.competition().equals(competition))
			.sorted((one, other) -> other.askedAt().compareTo(one.askedAt()))
			.toList();
	}

	Optional<ArchiveJob> find(CompetitionId competition, UUID id) {
		return of(competition).stream().filter((job) -> job.id().equals(id)).findFirst();
	}

	/** Ask for one; pressed twice it is still one. */
	synchronized ArchiveJob begin(CompetitionId competition, Variant variant, Actor actor) {
		return this.jobs.stream()
			.filter((job) -> job.isFor(competition, variant) && job.isOpen())
			.findFirst()
			.orElseGet(() -> {
				ArchiveJob job = new ArchiveJob(this.acts.nextId(), competition, variant, actor.name(),
						this.acts.now());
				of(competition).stream()
					.filter((earlier) -> earlier.isFor(competition, variant))
					.skip(KEPT_BESIDE)
					.forEach(this::drop);
				this.jobs.add(job);
				this.thread.execute(() -> make(job, actor));
				return job;
			});
	}

	private void make(ArchiveJob job, Actor actor) {
		try {
			at(job, 0, 1);
			Path folder = Files.createTempDirectory("rimebook-archive");
			try {
				Path file = folder.resolve("archive.zip");
				this.making.make(job, actor, file, (done, all) -> at(job, done, all));
				job.ready(file);
			}
			finally {
				clear(folder);
			}
		}
		catch (ArchiveRefusal ex) {
			job.failed(ex.sentence());
		}
		catch (IOException | RuntimeException ex) {
			log.warn("An archive could not be made", ex);
			job.failed(NoRoom.isWhy(ex)
					? "There is no room left on the disk of the machine that Rimebook runs on. Make some and ask again."
					: WRONG);
		}
		finally {
			if (job.isOpen()) {
				job.failed(WRONG);
			}
		}
		if (!this.thread.isShutdown()) {
			this.thread.schedule(() -> drop(job), KEPT.toSeconds(), TimeUnit.SECONDS);
		}
	}

	private void at(ArchiveJob job, int done, int all) {
		if (this.stopping) {
			throw new ArchiveRefusal("Rimebook was stopped meanwhile. Ask again.");
		}
		if (!job.isOpen()) {
			throw new ArchiveRefusal("Somebody stopped it.");
		}
		job.isAt(done, all);
	}

	private static void clear(Path folder) throws IOException {
		Files.deleteIfExists(folder.resolve("archive.zip"));
		Files.deleteIfExists(folder);
	}

	private void drop(ArchiveJob job) {
		this.jobs.remove(job);
		try {
			job.drop();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	@Override
	public void destroy() throws InterruptedException {
		this.stopping = true;
		this.thread.shutdown();
		this.thread.awaitTermination(5, TimeUnit.SECONDS);
		List.copyOf(this.jobs).forEach(this::drop);
	}

}
