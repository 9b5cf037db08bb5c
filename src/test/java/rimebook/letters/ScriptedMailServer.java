package rimebook.letters;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A mail server that says what a test wants it to say, to one letter after the other. */
final class ScriptedMailServer implements AutoCloseable {

	/** Hangs up instead of answering. */
	static final String HANGS_UP = "";

	private final ServerSocket socket;

	private final String toRecipient;

	private final String toLetter;

	private volatile int letters;

	private volatile String last = "";

	/**
	 * @param toRecipient the answer to {@code RCPT}
	 * @param toLetter the answer to the end of a letter
	 */
	ScriptedMailServer(String toRecipient, String toLetter) throws IOException {
		this.toRecipient = toRecipient;
		this.toLetter = toLetter;
		this.socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
		Thread thread = new Thread(this::serve, "scripted-mail");
		thread.setDaemon(true);
		thread.start();
	}

	int port() {
		return this.socket.getLocalPort();
	}

	/** How many letters were handed over to the end. */
	int letters() {
		return this.letters;
	}

	/** The letter that was handed over last, as it was sent. */
	String last() {
		return this.last;
	}

	private void serve() {
		while (!this.socket.isClosed()) {
			try (Socket client = this.socket.accept()) {
				speak(client);
			}
			catch (IOException ex) {
				// The test has ended, or the other side hung up.
			}
		}
	}

	private void speak(Socket client) throws IOException {
		BufferedReader in = new BufferedReader(
				new InputStreamReader(client.getInputStream(), StandardCharsets.US_ASCII));
		OutputStream out = client.getOutputStream();
		say(out, "220 here");
		for (String line = in.readLine(); line != null; line = in.readLine()) {
			if (line.startsWith("DATA")) {
				say(out, "354 go on");
				StringBuilder letter = new StringBuilder();
				for (String words = in.readLine(); words != null && !".".equals(words); words = in.readLine()) {
					letter.append(words).append("\r\n");
				}
				this.last = letter.toString();
				this.letters++;
				if (this.toLetter.equals(HANGS_UP)) {
					return;
				}
				say(out, this.toLetter);
			}
			else if (line.startsWith("RCPT")) {
				say(out, this.toRecipient);
			}
			else if (line.startsWith("QUIT")) {
				say(out, "221 bye");
				return;
			}
			else {
				say(out, "250 fine");
			}
		}
	}

	private static void say(OutputStream out, String line) throws IOException {
		out.write((line + "\r\n").getBytes(StandardCharsets.US_ASCII));
		out.flush();
	}

	@Override
	public void close() {
		try {
			this.socket.close();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
