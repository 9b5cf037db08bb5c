package rimebook.standby;

import java.io.FilterInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/**
 * Lets a long piece of work rest beside people who wait for the same processors: after
 * each moment of a processor three of rest, in portions so small that nobody notices one.
 * A system takes no notice of how important a thread is said to be. Waiting for a disk
 * counts as rest. Who has rested long enough goes on without, so that a copy of whatever
 * size is not late for it.
 */
final class Pace {

	/** For work that somebody waits for. */
	static final Pace NONE = new Pace(Duration.ZERO);

	private static final int REST = 3;

	private static final long PORTION = TimeUnit.MILLISECONDS.toNanos(2);

	private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

	private final long most;

	private long rested;

	private long worked;

	private volatile boolean hurried;

	/** A pace that rests so long in all for each piece of work. */
	Pace(Duration most) {
		this.most = most.toNanos();
	}

	/** A piece of work begins, in the thread that does it. */
	void begin() {
		this.rested = 0;
		this.worked = THREADS.getCurrentThreadCpuTime();
	}

	/** Somebody waits for this work now, so it does not rest; or nobody does any more. */
	void hurry(boolean hurried) {
		this.hurried = hurried;
	}

	/** After each small portion: rest as long as it is time to. */
	void rest() throws IOException {
		if (this.hurried || this.rested >= this.most) {
			return;
		}
		long portion = THREADS.getCurrentThreadCpuTime() - this.worked;
		if (portion < PORTION) {
			return;
		}
		long began = System.nanoTime();
		try {
			TimeUnit.NANOSECONDS.sleep(REST * portion);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new InterruptedIOException();
		}
		this.rested += System.nanoTime() - began;
		this.worked = THREADS.getCurrentThreadCpuTime();
	}

	/** How long this piece of work has rested. */
	Duration rested() {
		return Duration.ofNanos(this.rested);
	}

	/** What is written there is written at this pace. */
	OutputStream over(OutputStream out) {
		return new FilterOutputStream(out) {
			@Override
			public void write(byte[] bytes, int from, int length) throws IOException {
				this.out.write(bytes, from, length);
				rest();
			}
		};
	}

	/** What is read from there is read at this pace. */
	InputStream over(InputStream in) {
		return new FilterInputStream(in) {
			@Override
			public int read(byte[] bytes, int from, int length) throws IOException {
				int read = super.read(bytes, from, length);
				rest();
				return read;
			}
		};
	}

}
