package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import jakarta.servlet.AsyncContext;
import jakarta.servlet.AsyncEvent;
import jakarta.servlet.AsyncListener;
import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;
import org.jspecify.annotations.Nullable;

/**
 * One open connection that hears signals. No thread ever waits for it: bytes are written
 * when the connection takes them, and until then the newest signal of each segment is
 * kept, so what waits for a slow reader stays small.
 */
final class Follower implements WriteListener, AsyncListener {

	private static final byte[] HEARTBEAT = ":\n\n".getBytes(StandardCharsets.UTF_8);

	private final Map<String, Signal> waiting = new LinkedHashMap<>();

	private final AsyncContext connection;

	private final ServletOutputStream out;

	private final Instant since;

	private final Consumer<Follower> onLeave;

	private byte @Nullable [] greeting;

	private boolean beat;

	private boolean unflushed;

	private @Nullable Instant unreadSince;

	private Instant lastTold;

	private boolean open;

	private boolean gone;

	/**
	 * Take over a connection whose headers are set.
	 * @param retry after how many milliseconds the browser tries again when it breaks
	 * @param onLeave told once when the connection has ended
	 */
	Follower(AsyncContext connection, Instant now, int retry, Consumer<Follower> onLeave) throws IOException {
		this.connection = connection;
		this.out = connection.getResponse().getOutputStream();
		this.since = now;
		this.lastTold = now;
		this.onLeave = onLeave;
		this.greeting = ("retry: " + retry + "\n\n").getBytes(StandardCharsets.UTF_8);
		connection.setTimeout(0);
		connection.addListener(this);
	}

	/** Let the container say when to begin; what is told before then waits. */
	void open() {
		this.out.setWriteListener(this);
	}

	synchronized void tell(List<Signal> signals, Instant now) {
		signals.forEach((signal) -> this.waiting.put(signal.id(), signal));
		this.lastTold = now;
		write();
	}

	synchronized void beat(Instant now) {
		this.beat = true;
		this.lastTold = now;
		write();
	}

	/** Tell whether something has lain unread since before that time. */
	synchronized boolean isUnreadSince(Instant time) {
		return this.unreadSince != null && this.unreadSince.isBefore(time);
	}

	boolean isHereSince(Instant time) {
		return this.since.isBefore(time);
	}

	private void write() {
		try {
			writeWhatFits();
			this.unreadSince = isIdle() ? null : (this.unreadSince != null) ? this.unreadSince : this.lastTold;
		}
		catch (IOException | IllegalStateException ex) {
			leave();
		}
	}

	/** {@code isReady} may only be asked again once the container has called back. */
	private void writeWhatFits() throws IOException {
		while (this.open && !this.gone && !isIdle() && this.out.isReady()) {
			byte[] next = next();
			if (next.length > 0) {
				this.out.write(next);
				this.unflushed = true;
			}
			else {
				this.out.flush();
				this.unflushed = false;
			}
		}
	}

	private boolean isIdle() {
		return this.greeting == null && this.waiting.isEmpty() && !this.beat && !this.unflushed;
	}

	private byte[] next() {
		ByteArrayOutputStream next = new ByteArrayOutputStream();
		if (this.greeting != null) {
			next.writeBytes(this.greeting);
			this.greeting = null;
		}
		this.waiting.values().forEach((signal) -> next.writeBytes(signal.event()));
		if (this.beat && this.waiting.isEmpty()) {
			next.writeBytes(HEARTBEAT);
		}
		this.waiting.clear();
		this.beat = false;
		return next.toByteArray();
	}

	/** End the connection from here; the browser will come again. */
	synchronized void leave() {
		if (!this.gone) {
			this.gone = true;
			this.onLeave.accept(this);
			try {
				this.connection.complete();
			}
			catch (IllegalStateException ex) {
				// It has ended by itself meanwhile.
				this.waiting.clear();
			}
		}
	}

	@Override
	public synchronized void onWritePossible() {
		this.open = true;
		write();
	}

	@Override
	public void onError(Throwable thrown) {
		leave();
	}

	@Override
	public void onError(AsyncEvent event) {
		leave();
	}

	@Override
	public void onTimeout(AsyncEvent event) {
		leave();
	}

	@Override
	public synchronized void onComplete(AsyncEvent event) {
		if (!this.gone) {
			this.gone = true;
			this.onLeave.accept(this);
		}
	}

	@Override
	public void onStartAsync(AsyncEvent event) {
		// Nobody starts again what has been taken over.
	}

}
