package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.jspecify.annotations.Nullable;

/**
 * One open connection that hears signals. No thread ever waits for it: bytes are written
 * when the connection takes them, and until then the newest signal of each segment is
 * kept, so what waits for a slow reader stays small.
 */
final class Follower {

	private final Map<String, Signal> waiting = new LinkedHashMap<>();

	private final Line line;

	private final String address;

	private final Instant since;

	private final Consumer<Follower> onLeave;

	private final StreamWish wish;

	private byte @Nullable [] greeting;

	/** How far followers spread what they fetch, in a sign of life not written yet. */
	private int beat = -1;

	/**
	 * What differs on its page since the last time, not written yet; nothing waits then.
	 */
	private @Nullable PartEvent part;

	private boolean unflushed;

	private @Nullable Instant unreadSince;

	private Instant lastTold;

	private boolean open;

	private boolean gone;

	/**
	 * Speak on a line that is not open yet; what is told before then waits.
	 * @param wish what it shall bring
	 * @param address whence it comes, as it is counted
	 * @param retry after how many milliseconds the browser tries again when it breaks
	 * @param onLeave told once when the connection has ended
	 */
	Follower(Line line, StreamWish wish, String address, Instant now, int retry, Consumer<Follower> onLeave) {
		this.line = line;
		this.wish = wish;
		this.address = address;
		this.since = now;
		this.lastTold = now;
		this.onLeave = onLeave;
		this.greeting = ("retry: " + retry + "\n\n").getBytes(StandardCharsets.UTF_8);
	}

	/** Tell whether it is compressed. */
	boolean isPacked() {
		return this.wish.packed();
	}

	/** What it looks at, {@code null} if it only wants to hear that something moved. */
	@Nullable RenditionKey page() {
		return this.wish.part();
	}

	String address() {
		return this.address;
	}

	synchronized void tell(List<Signal> signals, Instant now) {
		tell(signals, Map.of(), now);
	}

	/**
	 * Tell what moved, and what differs on the page that is looked at. One difference
	 * follows another: whoever has not read the last one is told neither, and fetches.
	 * @param parts by what was asked for, with those signals in them
	 */
	synchronized void tell(List<Signal> signals, Map<RenditionKey, PartEvent> parts, Instant now) {
		RenditionKey page = this.wish.part();
		boolean behind = this.part != null || !this.waiting.isEmpty();
		if (this.part != null) {
			keep(this.part.signals());
		}
		this.part = (page != null && !behind) ? parts.get(page) : null;
		if (this.part == null) {
			keep(signals);
		}
		this.lastTold = now;
		write();
	}

	private void keep(List<Signal> signals) {
		signals.forEach((signal) -> this.waiting.put(signal.id(), signal));
	}

	/**
	 * Give a sign of life.
	 * @param within over how many milliseconds followers spread what they fetch
	 */
	synchronized void beat(int within, Instant now) {
		this.beat = within;
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

	private void writeWhatFits() throws IOException {
		while (this.open && !this.gone && !isIdle() && this.line.isReady()) {
			byte[] next = next();
			if (next.length > 0) {
				this.line.write(next);
				this.unflushed = true;
			}
			else {
				this.line.flush();
				this.unflushed = false;
			}
		}
	}

	private boolean isIdle() {
		return this.greeting == null && this.part == null && this.waiting.isEmpty() && this.beat < 0 && !this.unflushed;
	}

	private byte[] next() {
		PartEvent told = this.part;
		if (told != null && this.greeting == null && this.beat < 0) {
			// What thousands are told at once is not made anew for each.
			this.part = null;
			return told.bytes(this.wish.packed());
		}
		ByteArrayOutputStream next = new ByteArrayOutputStream();
		if (this.greeting != null) {
			next.writeBytes(this.wish.packed() ? StreamPacking.beginning() : new byte[0]);
			next.writeBytes(brief(this.greeting));
			this.greeting = null;
		}
		if (this.beat >= 0) {
			next.writeBytes(brief(Signal.alive(this.beat)));
		}
		if (this.part != null) {
			next.writeBytes(this.part.bytes(this.wish.packed()));
			this.part = null;
		}
		this.waiting.values().forEach((signal) -> next.writeBytes(brief(signal.event())));
		this.waiting.clear();
		this.beat = -1;
		return next.toByteArray();
	}

	private byte[] brief(byte[] event) {
		return this.wish.packed() ? StreamPacking.stored(event) : event;
	}

	/** End the connection from here; the browser will come again. */
	synchronized void leave() {
		if (!this.gone) {
			this.gone = true;
			this.waiting.clear();
			this.onLeave.accept(this);
			this.line.end();
		}
	}

	/** The line takes bytes, for the first time or again. */
	synchronized void onWritePossible() {
		this.open = true;
		write();
	}

}
