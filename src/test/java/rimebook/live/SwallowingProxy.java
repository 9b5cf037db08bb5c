package rimebook.live;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Passes bytes on until it is told to swallow; then every connection stays open and
 * nothing arrives any more, in either direction.
 */
final class SwallowingProxy implements AutoCloseable {

	private final ServerSocket door;

	private final int target;

	private final List<Way> ways = new CopyOnWriteArrayList<>();

	private volatile boolean swallowing;

	SwallowingProxy(int target) throws IOException {
		this.target = target;
		this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
		start(this::welcome);
	}

	int port() {
		return this.door.getLocalPort();
	}

	/** Swallow what goes over connections that are open; new ones are passed on. */
	void swallowOpen() {
		this.ways.forEach(Way::swallow);
	}

	/** Swallow what goes over connections that are open and over new ones, or no more. */
	void swallowAll(boolean swallow) {
		this.swallowing = swallow;
		if (swallow) {
			swallowOpen();
		}
	}

	private void welcome() {
		try {
			while (true) {
				Socket near = this.door.accept();
				Socket far = new Socket(InetAddress.getLoopbackAddress(), this.target);
				add(near, far);
				add(far, near);
			}
		}
		catch (IOException ex) {
			// Closed.
		}
	}

	private void add(Socket from, Socket to) {
		Way way = new Way(from, to, this.swallowing);
		this.ways.add(way);
		start(way);
	}

	private static void start(Runnable task) {
		Thread thread = new Thread(task, "swallowing-proxy");
		thread.setDaemon(true);
		thread.start();
	}

	@Override
	public void close() throws IOException {
		this.door.close();
		for (Way way : this.ways) {
			way.from.close();
		}
	}

	private static final class Way implements Runnable {

		private final Socket from;

		private final Socket to;

		private volatile boolean swallowing;

		private Way(Socket from, Socket to, boolean swallowing) {
			this.from = from;
			this.to = to;
			this.swallowing = swallowing;
		}

		private void swallow() {
			this.swallowing = true;
		}

		@Override
		public void run() {
			try (InputStream in = this.from.getInputStream(); OutputStream out = this.to.getOutputStream()) {
				byte[] bytes = new byte[8192];
				for (int count = in.read(bytes); count >= 0; count = in.read(bytes)) {
					if (!this.swallowing) {
						out.write(bytes, 0, count);
					}
				}
			}
			catch (IOException ex) {
				// Closed.
			}
		}

	}

}
