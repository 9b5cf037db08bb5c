package rimebook.rosters.web;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.rosters.RosterImport;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.wording.Sentence;

/**
 * Writes files of rosters one after the other beside everything else. Each is known to
 * the service that writes it, for an hour. After a restart the portions that were written
 * are there and nobody knows of the rest, so the file is sent again and goes on.
 */
@Component
class RosterImportJobs implements DisposableBean {

	private static final Duration KEPT = Duration.ofHours(1);

	private static final Log log = LogFactory.getLog(RosterImportJobs.class);

	private final RosterImport rosters;

	private final Acts acts;

	private final List<RosterImportJob> jobs = new CopyOnWriteArrayList<>();

	/** Never interrupted: that would close a database of H2 under everybody. */
	private final ThreadPoolExecutor thread = new ThreadPoolExecutor(1, 1, 1, TimeUnit.SECONDS,
			new LinkedBlockingQueue<>(), RosterImportJobs::thread);

	RosterImportJobs(RosterImport rosters, Acts acts) {
		this.rosters = rosters;
		this.acts = acts;
		this.thread.allowCoreThreadTimeOut(true);
	}

	private static Thread thread(Runnable work) {
		Thread thread = new Thread(work, "rosters");
		thread.setDaemon(true);
		return thread;
	}

	RosterImportJob begin(CompetitionId competition, RosterImportForm form, int rows, Actor actor) {
		this.jobs.removeIf((job) -> job.isFrom(this.acts.now().minus(KEPT)));
		RosterImportJob job = new RosterImportJob(this.acts.nextId(), competition, this.acts.now(), rows, form);
		this.jobs.add(job);
		this.thread.execute(() -> write(job, competition, form, actor));
		return job;
	}

	/** The one of that identity; empty if this service knows of none, or no longer. */
	Optional<RosterImportJob> job(CompetitionId competition, UUID id) {
		return this.jobs.stream().filter((job) -> job.id().equals(id) && job.isOf(competition)).findFirst();
	}

	private void write(RosterImportJob job, CompetitionId competition, RosterImportForm form, Actor actor) {
		try {
			job.written(this.rosters.apply(competition, form.csv(), form.answers(), job::isAt, actor));
		}
		catch (RimebookException ex) {
			job.refused(ex.sentence());
		}
		catch (RuntimeException ex) {
			log.warn("Rosters could not be written: " + ex.getClass().getName());
			job.refused(Sentence.of("rosters.import.wrong"));
		}
	}

	@Override
	public void destroy() throws InterruptedException {
		this.thread.shutdown();
		this.thread.awaitTermination(5, TimeUnit.SECONDS);
	}

}
