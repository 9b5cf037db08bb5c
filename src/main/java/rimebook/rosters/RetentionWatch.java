package rimebook.rosters;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;

/**
 * Looks once an hour whether the day of a competition has come on which what is known of
 * its people is deleted. Any number of services may look at one database: who comes first
 * deletes.
 */
@Component
class RetentionWatch implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(RetentionWatch.class);

	private final Retention retention;

	private @Nullable ScheduledExecutorService thread;

	RetentionWatch(Retention retention) {
		this.retention = retention;
	}

	/** Delete what is due; a failure leaves it due. */
	void look() {
		try {
			for (CompetitionId competition : this.retention.due()) {
				this.retention.delete(competition);
				log.info("What was known of the people of a competition was deleted; the record says how much");
			}
		}
		catch (RuntimeException ex) {
			log.warn("What is known of people could not be deleted; it is tried again within an hour", ex);
		}
	}

	@Override
	public synchronized void start() {
		if (this.thread == null) {
			this.thread = Executors.newSingleThreadScheduledExecutor(RetentionWatch::thread);
			this.thread.scheduleWithFixedDelay(this::look, 1, 60, TimeUnit.MINUTES);
		}
	}

	private static Thread thread(Runnable task) {
		Thread thread = new Thread(task, "retention");
		thread.setDaemon(true);
		return thread;
	}

	/** Not interrupted: that would close a database of H2 under everybody. */
	@Override
	public synchronized void stop() {
		if (this.thread != null) {
			this.thread.shutdown();
			this.thread = null;
		}
	}

	@Override
	public synchronized boolean isRunning() {
		return this.thread != null;
	}

}
