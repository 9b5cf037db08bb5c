package rimebook.standby;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

import rimebook.shared.KeptFolder;

/**
 * Brings back what lay beside the database where its life began from a copy, while the
 * service answers already: cards do not wait for music. What was not brought back before
 * the service stopped comes with the next start, if the copy is there.
 */
@Component
class FilesBack implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(FilesBack.class);

	private static final int SECONDS_UNTIL_TRIED_AGAIN = 10;

	private final ServiceLives lives;

	private final List<KeptFolder> folders;

	private volatile int coming = -1;

	private volatile @Nullable ScheduledExecutorService thread;

	FilesBack(ServiceLives lives, ObjectProvider<KeptFolder.Source> beside) {
		this.lives = lives;
		this.folders = beside.orderedStream().flatMap((source) -> source.folder().stream()).toList();
	}

	/** How many files are on their way; negative where it was not looked yet. */
	int coming() {
		return this.coming;
	}

	@Override
	public synchronized void start() {
		ServiceLife.Origin from = this.lives.current().from();
		if (this.thread == null && from != null && !from.isByOtherTools() && !this.folders.isEmpty()) {
			Path place = Path.of(from.folder());
			ScheduledExecutorService started = Executors.newSingleThreadScheduledExecutor(FilesBack::thread);
			this.thread = started;
			started.scheduleWithFixedDelay(() -> look(place), 0, SECONDS_UNTIL_TRIED_AGAIN, TimeUnit.SECONDS);
		}
	}

	/**
	 * A place that cannot be read, such as a stick that was pulled out, may come back.
	 */
	private void look(Path place) {
		boolean before = this.coming > 0;
		try {
			do {
				this.coming = bring(place);
			}
			while (this.coming > 0 && isRunning());
			if (before) {
				log.info("What lies beside the database came back from " + place);
			}
		}
		catch (IOException | RuntimeException ex) {
			log.warn("Not everything beside the database came back from " + place, ex);
		}
	}

	private int bring(Path place) throws IOException {
		int left = 0;
		for (KeptFolder folder : this.folders) {
			left += new KeptFolder(folder.name(), place.resolve(folder.name())).copyTo(folder.path(),
					CopyMaker.PORTION);
		}
		return left;
	}

	private static Thread thread(Runnable task) {
		Thread thread = new Thread(task, "files-back");
		thread.setDaemon(true);
		thread.setPriority(Thread.MIN_PRIORITY);
		return thread;
	}

	@Override
	public synchronized void stop() {
		ScheduledExecutorService running = this.thread;
		if (running != null) {
			running.shutdown();
			this.thread = null;
		}
	}

	@Override
	public boolean isRunning() {
		return this.thread != null;
	}

}
