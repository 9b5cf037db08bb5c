package rimebook.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.Consumer;

/**
 * Thousands of connections to this machine's own service, from several of its own
 * addresses, on the one thread that calls {@link #runUntil}. Each request has a
 * connection of its own; the answer ends with it.
 */
final class Loopback {

	/** Each has some 28,000 ports to call from. */
	private static final int ADDRESSES = 16;

	/** As much of an answer as anybody looks at. */
	/** What each piece of a stream begins with. */
	static final String STREAM = "text/event-stream";

	private static final int KEPT = 4000;

	/** On a stream, where what differs on a page is told with the word of it. */
	private static final int KEPT_OF_STREAM = 20_000;

	private final Selector selector;

	private final InetSocketAddress service;

	private final PriorityQueue<Task> tasks = new PriorityQueue<>(Comparator.comparingLong(Task::at));

	private final ByteBuffer read = ByteBuffer.allocateDirect(65_536);

	private int next;

	private int failures;

	Loopback(int port) throws IOException {
		this.selector = Selector.open();
		this.service = new InetSocketAddress("127.0.0.1", port);
	}

	/**
	 * The followers' own devices are no part of the service's machine: this thread, which
	 * plays all of them, takes what the service leaves. The crew keeps its turn, its
	 * thread is there already.
	 */
	static void stepBack() throws Exception {
		String thread = Files.readSymbolicLink(Path.of("/proc/thread-self")).getFileName().toString();
		int code = new ProcessBuilder("renice", "-n", "19", "-p", thread).start().waitFor();
		System.out.println((code == 0) ? "The crowd waits behind the service." : "The crowd takes its share of the cores.");
	}

	/** How many connections could not be made, or broke. */
	int failures() {
		return this.failures;
	}

	void after(long millis, Runnable task) {
		this.tasks.add(new Task(System.nanoTime() + millis * 1_000_000, task));
	}

	/**
	 * Ask for a path.
	 * @param headers more lines for the head, each with its line end
	 * @param heard given what has been heard so far each time that something comes
	 * @param ended given the beginning of the whole answer, empty if it broke
	 */
	void get(String path, String headers, Consumer<String> heard, Consumer<String> ended) {
		String head = "GET " + path + " HTTP/1.1\r\nHost: localhost\r\n" + headers + "\r\n";
		try {
			SocketChannel channel = SocketChannel.open();
			channel.configureBlocking(false);
			channel.bind(new InetSocketAddress("127.0.0." + (1 + this.next++ % ADDRESSES), 0));
			channel.connect(this.service);
			Exchange exchange = new Exchange(ByteBuffer.wrap(head.getBytes(StandardCharsets.US_ASCII)), heard, ended);
			channel.register(this.selector, SelectionKey.OP_CONNECT, exchange);
		}
		catch (IOException ex) {
			this.failures++;
			ended.accept("");
		}
	}

	/** Do all of it until that time. */
	void runUntil(long nanoTime) throws IOException {
		while (System.nanoTime() < nanoTime) {
			this.selector.select(this::step, 5);
			long now = System.nanoTime();
			while (!this.tasks.isEmpty() && this.tasks.peek().at() < now) {
				this.tasks.poll().what().run();
			}
		}
	}

	/** Hang up on everybody. */
	void close() throws IOException {
		for (SelectionKey key : this.selector.keys()) {
			key.channel().close();
		}
		this.selector.close();
	}

	private void step(SelectionKey key) {
		Exchange exchange = (Exchange) key.attachment();
		try {
			SocketChannel channel = (SocketChannel) key.channel();
			if (key.isConnectable()) {
				channel.finishConnect();
				channel.write(exchange.head);
				key.interestOps(SelectionKey.OP_READ);
			}
			else if (key.isReadable()) {
				read(channel, exchange);
			}
		}
		catch (IOException ex) {
			this.failures++;
			close(key, exchange, "");
		}
	}

	private void read(SocketChannel channel, Exchange exchange) throws IOException {
		this.read.clear();
		int count = channel.read(this.read);
		if (count < 0) {
			close(channel.keyFor(this.selector), exchange, exchange.kept.toString());
			return;
		}
		this.read.flip();
		int most = exchange.streams ? KEPT_OF_STREAM : KEPT;
		byte[] bytes = new byte[Math.max(0, Math.min(this.read.remaining(), most - exchange.kept.length()))];
		this.read.get(bytes);
		exchange.kept.append(new String(bytes, StandardCharsets.ISO_8859_1));
		exchange.heard.accept(exchange.kept.toString());
	}

	private static void close(SelectionKey key, Exchange exchange, String answer) {
		try {
			key.channel().close();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		exchange.ended.accept(answer);
	}

	private record Task(long at, Runnable what) {
	}

	private static final class Exchange {

		private final ByteBuffer head;

		private final Consumer<String> heard;

		private final Consumer<String> ended;

		private final StringBuilder kept = new StringBuilder();

		private boolean streams;

		private Exchange(ByteBuffer head, Consumer<String> heard, Consumer<String> ended) {
			this.head = head;
			this.heard = (text) -> {
				heard.accept(text);
				if (this.streams || text.contains(STREAM)) {
					this.streams = true;
					this.kept.setLength(0);
					this.kept.append(STREAM);
				}
			};
			this.ended = ended;
		}

	}

}
