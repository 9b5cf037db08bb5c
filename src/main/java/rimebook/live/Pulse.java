package rimebook.live;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * The one thread of the public side: looks for changes, has the pages that are followed
 * made from them, tells followers, and gives signs of life. May be stopped and started
 * again; a stop lets all followers go, so that a shutdown need not wait for them.
 */
@Component
class Pulse implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(Pulse.class);

	/** What is longer, compressed, is fetched and not told. */
	private static final int LARGEST = 16 * 1024;

	private final MomentWatch watch;

	private final RenditionCache renditions;

	private final FollowerRegister followers;

	private final LiveSettings settings;

	private @Nullable ScheduledExecutorService thread;

	Pulse(MomentWatch watch, RenditionCache renditions, FollowerRegister followers, LiveSettings settings) {
		this.watch = watch;
		this.renditions = renditions;
		this.followers = followers;
		this.settings = settings;
	}

	/** Look for changes at once, without keeping the caller waiting. */
	synchronized void quicken() {
		this.watch.nudge();
		if (this.thread != null) {
			try {
				this.thread.execute(guarded(this::look));
			}
			catch (RejectedExecutionException ex) {
				log.debug("Stopped in this moment; whoever comes next looks", ex);
			}
		}
	}

	@Override
	public synchronized void start() {
		if (this.thread == null) {
			this.thread = Executors.newSingleThreadScheduledExecutor(Pulse::thread);
			every(this.settings.look().toMillis(), this::look);
			every(this.settings.heartbeat().toMillis(), this.followers::beat);
		}
	}

	private void look() {
		this.watch.lookAtAll(this::herald);
	}

	/**
	 * Everybody fetches when they are told, unless what differs is told with it; so what
	 * they fetch is there by then. Those whose page is made are told before the next one
	 * is, the most followed first. All of a page is compressed after that: the first who
	 * asks waits for it, and those who were told what differs do not.
	 */
	private void herald(MomentWatch.News news) {
		String competition = news.competition();
		if (this.followers.follow(competition)) {
			Set<RenditionKey> told = new HashSet<>();
			this.renditions.makeAhead(competition, news.now(), (page, difference) -> {
				PartEvent part = PartEvent.of(difference, news.signals());
				if (part.bytes(true).length <= LARGEST) {
					this.followers.tell(competition, news.signals(), Map.of(page, part), page::equals);
					told.add(page);
				}
			});
			this.followers.tell(competition, news.signals(), Map.of(), (page) -> !told.contains(page));
			this.renditions.compressAhead(competition);
		}
	}

	private void every(long millis, Runnable task) {
		if (this.thread != null) {
			this.thread.scheduleWithFixedDelay(guarded(task), millis, millis, TimeUnit.MILLISECONDS);
		}
	}

	/** A failure, such as a database that is away, must not end the beating. */
	private static Runnable guarded(Runnable task) {
		return () -> {
			try {
				task.run();
			}
			catch (RuntimeException ex) {
				log.warn("The public side could not look for changes; it will look again", ex);
			}
		};
	}

	private static Thread thread(Runnable task) {
		Thread thread = new Thread(task, "live-pulse");
		thread.setDaemon(true);
		return thread;
	}

	@Override
	public synchronized void stop() {
		if (this.thread != null) {
			this.thread.shutdownNow();
			this.thread = null;
		}
		this.followers.leaveAll();
	}

	@Override
	public synchronized boolean isRunning() {
		return this.thread != null;
	}

}
