package rimebook.letters;

import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

import rimebook.shared.RimebookException;

/**
 * The one thread of a service that sends letters, one after the other, with a breath
 * between them: cards come first. Where there is no mail server it does not run.
 */
@Component
class Postman implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(Postman.class);

	private static final long EVERY_SECONDS = 5;

	private static final long BREATH_NANOS = TimeUnit.MILLISECONDS.toNanos(20);

	private final LetterQueue queue;

	private final Carrier carrier;

	private final LinkedLetters linked;

	private final Clock clock;

	private volatile boolean stopping;

	private @Nullable ScheduledExecutorService thread;

	Postman(LetterQueue queue, Carrier carrier, LinkedLetters linked, Clock clock) {
		this.queue = queue;
		this.carrier = carrier;
		this.linked = linked;
		this.clock = clock;
	}

	/**
	 * Send what is due, until nothing is or the server is not there.
	 * @return how many letters were handed over or tried
	 */
	int round() {
		int lost = this.queue.strand(this.clock.instant());
		if (lost > 0) {
			log.warn(lost + " letters were on their way when a service ended; their page says so");
		}
		for (int tried = 0;; tried++) {
			Optional<LetterQueue.Claimed> next = this.stopping ? Optional.empty()
					: this.queue.claim(this.clock.instant());
			if (next.isEmpty()) {
				return tried;
			}
			if (!carry(next.get())) {
				return tried + 1;
			}
			LockSupport.parkNanos(BREATH_NANOS);
		}
	}

	/** Returns whether the server is there. */
	private boolean carry(LetterQueue.Claimed letter) {
		LinkedLetters.Ready ready;
		try {
			ready = this.linked.ready(letter);
		}
		catch (RimebookException refusal) {
			this.queue.hold(letter, refusal.sentence().english(), this.clock.instant());
			log.warn("Letter " + letter.id() + " is held back; its page says why");
			return true;
		}
		catch (RuntimeException ex) {
			this.queue.failed(letter, "The personal link could not be made.", this.clock.instant());
			log.warn("Letter " + letter.id() + " waits: its link could not be made", ex);
			return true;
		}
		return handOver(ready);
	}

	private boolean handOver(LinkedLetters.Ready ready) {
		LetterQueue.Claimed letter = ready.letter();
		Carrier.Outcome outcome = this.carrier.carry(letter);
		String words = ready.told(outcome.words());
		switch (outcome.ending()) {
			case SENT -> this.queue.sent(letter, this.clock.instant());
			case REFUSED -> this.queue.settle(letter, LetterState.REFUSED, words, this.clock.instant());
			case DOUBTFUL -> this.queue.settle(letter, LetterState.DOUBTFUL, words, this.clock.instant());
			case FAILED, UNREACHABLE -> this.queue.failed(letter, words, this.clock.instant());
		}
		this.linked.ended(ready, outcome.ending());
		if (outcome.ending() != Carrier.Ending.SENT) {
			// Neither the address nor the server's words, which may hold it.
			log.warn("Letter " + letter.id() + " did not go (" + outcome.ending() + "); its page says why");
		}
		return outcome.ending() != Carrier.Ending.UNREACHABLE;
	}

	private void look() {
		try {
			round();
		}
		catch (RuntimeException ex) {
			log.warn("Letters could not be sent; it is tried again", ex);
		}
	}

	@Override
	public synchronized void start() {
		if (this.thread == null && this.carrier.isThere()) {
			this.stopping = false;
			this.thread = Executors.newSingleThreadScheduledExecutor(Postman::thread);
			this.thread.scheduleWithFixedDelay(this::look, EVERY_SECONDS, EVERY_SECONDS, TimeUnit.SECONDS);
		}
	}

	private static Thread thread(Runnable task) {
		Thread thread = new Thread(task, "letters");
		thread.setDaemon(true);
		thread.setPriority(Thread.MIN_PRIORITY);
		return thread;
	}

	/**
	 * Not interrupted: that would close a database of H2 under everybody. The letter that
	 * is just handed over is waited for as long as a stop may take.
	 */
	@Override
	public synchronized void stop() {
		if (this.thread != null) {
			this.stopping = true;
			this.thread.shutdown();
			try {
				this.thread.awaitTermination(4, TimeUnit.SECONDS);
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

}
