package rimebook.web;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.apache.catalina.connector.Request;
import org.apache.coyote.ActionCode;
import org.apache.tomcat.util.buf.ByteChunk;

/**
 * Small bodies that are on their way. There are only so many places; when they are taken,
 * the newest takes that of the one who has waited longest, of the address that has most.
 * So senders who never finish make place for those who do.
 */
final class Arrivals {

	private static final long SHORTEST_PAUSE = 1;

	private static final long LONGEST_PAUSE = 20;

	private final Set<Arrival> waiting = new LinkedHashSet<>();

	private final int places;

	private final Duration patience;

	Arrivals(int places, Duration patience) {
		this.places = places;
		this.patience = patience;
	}

	/**
	 * Wait for the whole body and put it back, so that whoever reads it never waits.
	 * @return whether it came in time
	 */
	boolean await(Request request) throws IOException {
		byte[] body = new byte[Math.toIntExact(request.getContentLengthLong())];
		Arrival arrival = new Arrival(request.getRemoteAddr());
		add(arrival);
		try {
			if (!fill(body, request, arrival)) {
				return false;
			}
		}
		finally {
			remove(arrival);
		}
		ByteChunk whole = new ByteChunk();
		whole.setBytes(body, 0, body.length);
		request.getCoyoteRequest().action(ActionCode.REQ_SET_BODY_REPLAY, whole);
		return true;
	}

	private boolean fill(byte[] body, Request request, Arrival arrival) throws IOException {
		InputStream in = request.getStream();
		long end = System.nanoTime() + this.patience.toNanos();
		long pause = SHORTEST_PAUSE;
		int count = 0;
		while (count < body.length) {
			int here = available(request);
			if (here > 0) {
				count += Math.max(0, in.read(body, count, Math.min(here, body.length - count)));
				pause = SHORTEST_PAUSE;
			}
			else if (arrival.evicted || System.nanoTime() > end || !pause(pause)) {
				return false;
			}
			else {
				pause = Math.min(LONGEST_PAUSE, 2 * pause);
			}
		}
		return true;
	}

	private static int available(Request request) {
		request.getCoyoteRequest().action(ActionCode.AVAILABLE, Boolean.TRUE);
		return request.getCoyoteRequest().getAvailable();
	}

	private static boolean pause(long millis) {
		try {
			TimeUnit.MILLISECONDS.sleep(millis);
			return true;
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			return false;
		}
	}

	private synchronized void add(Arrival arrival) {
		if (this.waiting.size() >= this.places) {
			Arrival slow = slowest();
			slow.evicted = true;
			this.waiting.remove(slow);
		}
		this.waiting.add(arrival);
	}

	private Arrival slowest() {
		Map<String, Long> counts = this.waiting.stream()
			.collect(Collectors.groupingBy(Arrival::address, Collectors.counting()));
		Function<Arrival, Long> crowd = (each) -> counts.getOrDefault(each.address(), 0L);
		long most = this.waiting.stream().map(crowd).max(Comparator.naturalOrder()).orElseThrow();
		return this.waiting.stream().filter((each) -> crowd.apply(each) == most).findFirst().orElseThrow();
	}

	private synchronized void remove(Arrival arrival) {
		this.waiting.remove(arrival);
	}

	private static final class Arrival {

		private final String address;

		private volatile boolean evicted;

		private Arrival(String address) {
			this.address = address;
		}

		private String address() {
			return this.address;
		}

	}

}
