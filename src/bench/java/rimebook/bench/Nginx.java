package rimebook.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The proxy as {@code deploy/nginx} sets it up, on this machine: only addresses, ports
 * and the places of its files are others.
 */
final class Nginx implements AutoCloseable {

	private static final Path DEPLOYED = Path.of("deploy", "nginx");

	private final Path folder;

	private final int port = freePort();

	private final int filePort = freePort();

	private final int plainPort = freePort();

	private Process process;

	private Nginx(Path folder) {
		this.folder = folder;
	}

	/** Tell whether there is one on this machine. */
	static boolean isHere() {
		return Stream.of("/usr/sbin/nginx", "/usr/bin/nginx", "/usr/local/sbin/nginx").map(Path::of).anyMatch(Files::isExecutable);
	}

	/** Start it in front of services on these ports of this machine. */
	static Nginx before(int... ports) throws IOException, InterruptedException {
		Nginx nginx = new Nginx(Files.createTempDirectory("rimebook-nginx"));
		nginx.furnish(ports);
		nginx.start();
		return nginx;
	}

	/** The port of the proxy. */
	int port() {
		return this.port;
	}

	/** The port at which it sends files of {@link #file(String, byte[])}, and nothing else. */
	int filePort() {
		return this.filePort;
	}

	/** The port at which it sends the same files without what the proxy sets, as it does by itself. */
	int plainPort() {
		return this.plainPort;
	}

	/** Put a file there, compressed already if it says so by its name. */
	void file(String name, byte[] bytes) throws IOException {
		Files.write(this.folder.resolve("files").resolve(name), bytes);
	}

	private void furnish(int... ports) throws IOException {
		this.folder.toFile().setExecutable(true, false);
		this.folder.toFile().setReadable(true, false);
		Files.createDirectories(this.folder.resolve("files"));
		try (Stream<Path> files = Files.list(DEPLOYED)) {
			for (Path file : files.toList()) {
				Files.writeString(this.folder.resolve(file.getFileName()), moved(Files.readString(file)));
			}
		}
		nodes(IntStream.of(ports).mapToObj((each) -> "server 127.0.0.1:" + each + " max_fails=1 fail_timeout=3s;").toList());
		Files.writeString(this.folder.resolve("listen.conf"), "listen 127.0.0.1:" + this.port + " reuseport backlog=4096;");
		Path main = this.folder.resolve("nginx.conf");
		String text = Files.readString(main);
		Files.writeString(main, text.substring(0, text.lastIndexOf('}')) + """
				server {
					listen 127.0.0.1:%d reuseport backlog=4096;
					root %s/files;
					gzip_static on;
					etag on;
				}
				server {
					listen 127.0.0.1:%d reuseport backlog=4096;
					root %s/files;
					gzip_static on;
					open_file_cache off;
				}
				}
				""".formatted(this.filePort, this.folder, this.plainPort, this.folder));
	}

	private String moved(String text) {
		return text.replace("/run/nginx.pid", this.folder + "/nginx.pid").replace("/var/cache/nginx", this.folder + "/cache");
	}

	/** Say which nodes there are, each a line of {@code nodes.conf}. */
	void nodes(List<String> lines) throws IOException {
		Files.writeString(this.folder.resolve("nodes.conf"), lines.stream().collect(Collectors.joining("\n", "", "\n")));
	}

	/** Let it read its files again, as one does before a node is taken out. */
	void reload() throws IOException, InterruptedException {
		new ProcessBuilder("kill", "-HUP", Long.toString(this.process.pid())).start().waitFor();
		TimeUnit.MILLISECONDS.sleep(500);
	}

	private void start() throws IOException, InterruptedException {
		this.process = new ProcessBuilder("nginx", "-p", this.folder.toString(), "-c", this.folder.resolve("nginx.conf").toString(),
				"-g", "daemon off;")
			.redirectErrorStream(true)
			.redirectOutput(this.folder.resolve("log").toFile())
			.start();
		for (int i = 0; i < 100 && !isUp(); i++) {
			TimeUnit.MILLISECONDS.sleep(50);
		}
		if (!isUp()) {
			throw new IOException("nginx did not come up:\n" + Files.readString(this.folder.resolve("log")));
		}
	}

	private boolean isUp() {
		try (Socket socket = new Socket()) {
			socket.connect(new InetSocketAddress("127.0.0.1", this.port));
			return true;
		}
		catch (IOException ex) {
			return false;
		}
	}

	/** What it wrote of errors. */
	String log() throws IOException {
		return Files.readString(this.folder.resolve("log"));
	}

	@Override
	public void close() {
		this.process.destroy();
	}

	private static int freePort() {
		try (ServerSocket socket = new ServerSocket(0)) {
			return socket.getLocalPort();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
