package rimebook.web;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Places for a kind of guest. When all are taken, as many again may wait a moment for
 * one: people who are told of a new standing all come within it, and who is sent away
 * comes back only seconds later. However many come, no more threads than that are theirs.
 */
class Places {

	private final Semaphore free;

	private final Semaphore waiting;

	private final Duration moment;

	/**
	 * @param number how many there are
	 * @param moment how long somebody waits for one
	 */
	Places(int number, Duration moment) {
		this.free = new Semaphore(number);
		this.waiting = new Semaphore(number);
		this.moment = moment;
	}

	/** Take a place, perhaps after a moment; tell whether there was one. */
	boolean take() {
		if (this.free.tryAcquire()) {
			return true;
		}
		if (!this.waiting.tryAcquire()) {
			return false;
		}
		try {
			return this.free.tryAcquire(this.moment.toNanos(), TimeUnit.NANOSECONDS);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			return false;
		}
		finally {
			this.waiting.release();
		}
	}

	void leave() {
		this.free.release();
	}

}
