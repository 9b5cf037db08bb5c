package rimebook.web;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

import org.apache.tomcat.util.http.FastHttpDateFormat;
import org.apache.tomcat.util.net.NioChannel;
import org.apache.tomcat.util.net.NioEndpoint;
import org.apache.tomcat.util.net.SocketEvent;
import org.apache.tomcat.util.net.SocketWrapperBase;
import org.jspecify.annotations.Nullable;

import rimebook.pages.DoorAnswers;

/**
 * The server's connections. What is kept ({@link DoorAnswers}) is answered by the very
 * thread that hears that a request has come: nothing is looked for, nothing is waited
 * for, and no thread is woken. Everything else is put back as it came and goes the usual
 * way.
 *
 * <p>
 * Written by hand for one figure: of the pages a second that nginx sends as files from
 * the same machine, the server's own way sent a third, with a filter or a valve in front
 * of everything. The benchmark StandingRate tells what it is.
 */
class DoorEndpoint extends NioEndpoint {

	/** As much as the server's own buffer takes back. */
	private static final int HEAD = 4096;

	/** A head and a compressed standing of thirty teams go in one piece. */
	private static final int PIECE = 32 * 1024;

	/** What is offered to a connection at once after that. */
	private static final int LARGE_PIECE = 256 * 1024;

	private final ThreadLocal<Desk> desks = ThreadLocal.withInitial(Desk::new);

	/** What the other side has not taken yet. */
	private final Map<SocketWrapperBase<NioChannel>, Rest> rests = new ConcurrentHashMap<>();

	private volatile Supplier<@Nullable DoorAnswers> answers = () -> null;

	private volatile long patience = 10_000;

	/**
	 * Answer at the door from now on.
	 * @param answers who knows what is at hand
	 * @param patience how many milliseconds somebody may take nothing of an answer
	 */
	void answerFrom(Supplier<@Nullable DoorAnswers> answers, long patience) {
		this.answers = answers;
		this.patience = patience;
	}

	/** Forget what was meant for connections that have ended. */
	void tidy() {
		this.rests.keySet().removeIf(SocketWrapperBase::isClosed);
	}

	@Override
	public boolean processSocket(SocketWrapperBase<NioChannel> connection, SocketEvent event, boolean dispatch) {
		if (event == SocketEvent.OPEN_WRITE) {
			Rest rest = this.rests.remove(connection);
			if (rest != null) {
				send(connection, rest);
				return true;
			}
		}
		else if (event == SocketEvent.OPEN_READ && dispatch && connection.getCurrentProcessor() == null
				&& isAnswered(connection)) {
			return true;
		}
		return super.processSocket(connection, event, dispatch);
	}

	/** Only where nothing lies between the connection and its bytes. */
	private boolean isAnswered(SocketWrapperBase<NioChannel> connection) {
		DoorAnswers known = this.answers.get();
		NioChannel channel = connection.getSocket();
		if (known == null || isPaused() || channel.getClass() != NioChannel.class
				|| !channel.getBufHandler().isReadBufferEmpty()) {
			return false;
		}
		Desk desk = this.desks.get();
		try {
			int count = desk.read(channel.getIOChannel());
			if (count <= 0) {
				return false;
			}
			DoorHead head = DoorHead.read(desk.head, count);
			DoorAnswers.Asked asked = (head != null) ? head.asked() : null;
			DoorAnswers.Told told = (asked != null) ? known.answer(asked) : null;
			if (head == null || asked == null || told == null) {
				connection.unRead(ByteBuffer.wrap(desk.head, 0, count));
				return false;
			}
			touch(connection);
			send(connection,
					desk.write(told, asked.headOnly(), told.close() || head.isClose(), channel.getIOChannel()));
			return true;
		}
		catch (IOException ex) {
			// Gone is gone, whatever the reason.
			connection.close();
			return true;
		}
	}

	private static void touch(SocketWrapperBase<NioChannel> connection) {
		if (connection instanceof NioSocketWrapper socket) {
			socket.updateLastRead();
		}
	}

	/** Go on with an answer as far as the other side takes it, without waiting. */
	private void send(SocketWrapperBase<NioChannel> connection, Rest rest) {
		try {
			SocketChannel channel = connection.getSocket().getIOChannel();
			while (rest.bytes().hasRemaining() && rest.writePiece(channel) > 0) {
				// As long as it takes anything.
			}
			if (rest.bytes().hasRemaining()) {
				await(connection, rest);
			}
			else if (rest.close()) {
				connection.close();
			}
			else {
				connection.setReadTimeout(getKeepAliveTimeout());
				connection.registerReadInterest();
			}
		}
		catch (IOException ex) {
			connection.close();
		}
	}

	private void await(SocketWrapperBase<NioChannel> connection, Rest rest) {
		this.rests.put(connection, rest);
		connection.setWriteTimeout(this.patience);
		if (connection instanceof NioSocketWrapper socket) {
			socket.updateLastWrite();
		}
		connection.registerWriteInterest();
	}

	/**
	 * What is still to be sent.
	 *
	 * @param bytes the kept bytes themselves from some position on; no copy, however many
	 * take their time
	 * @param close whether the connection ends then
	 */
	private record Rest(ByteBuffer bytes, boolean close) {

		int writePiece(SocketChannel channel) throws IOException {
			ByteBuffer piece = this.bytes.slice().limit(Math.min(LARGE_PIECE, this.bytes.remaining()));
			int count = channel.write(piece);
			this.bytes.position(this.bytes.position() + count);
			return count;
		}

	}

	/** Where the thread reads and writes. */
	private static final class Desk {

		private final ByteBuffer in = ByteBuffer.allocateDirect(HEAD);

		private final ByteBuffer out = ByteBuffer.allocateDirect(PIECE);

		private final byte[] head = new byte[HEAD];

		int read(SocketChannel channel) throws IOException {
			this.in.clear();
			int count = channel.read(this.in);
			this.in.flip();
			this.in.get(this.head, 0, this.in.remaining());
			return count;
		}

		/** Send the head and what fits of the body in one piece; what is left of it. */
		Rest write(DoorAnswers.Told told, boolean headOnly, boolean close, SocketChannel channel) throws IOException {
			byte[] body = headOnly ? new byte[0] : told.body();
			this.out.clear();
			this.out.put(told.head());
			String last = told.more() + ((close && !told.close()) ? "Connection: close\r\n" : "") + "Date: "
					+ FastHttpDateFormat.getCurrentDate() + "\r\n\r\n";
			this.out.put(last.getBytes(StandardCharsets.US_ASCII));
			int fits = Math.min(this.out.remaining(), body.length);
			this.out.put(body, 0, fits).flip();
			channel.write(this.out);
			return this.out.hasRemaining() ? rest(body, fits, close)
					: new Rest(ByteBuffer.wrap(body).position(fits), close);
		}

		/** Hardly ever: the other side takes less than a piece. */
		private Rest rest(byte[] body, int fits, boolean close) {
			ByteBuffer rest = ByteBuffer.allocate(this.out.remaining() + body.length - fits);
			return new Rest(rest.put(this.out).put(body, fits, body.length - fits).flip(), close);
		}

	}

}
