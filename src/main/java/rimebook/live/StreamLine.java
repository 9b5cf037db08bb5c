package rimebook.live;

import java.io.IOException;

import jakarta.servlet.http.WebConnection;
import org.apache.coyote.http11.upgrade.InternalHttpUpgradeHandler;
import org.apache.tomcat.util.net.AbstractEndpoint.Handler.SocketState;
import org.apache.tomcat.util.net.SSLSupport;
import org.apache.tomcat.util.net.SocketEvent;
import org.apache.tomcat.util.net.SocketWrapperBase;
import org.jspecify.annotations.Nullable;

/**
 * A connection taken over from the server once the head of the answer is sent. The server
 * takes back the buffers of request and answer, which are most of what an open connection
 * costs, and only says when bytes may be written or the other side has hung up.
 *
 * <p>
 * Written by hand for one figure: as an asynchronous request of the framework a stream
 * held about 100 KiB, and 3,540 of them ended a service with 512 MiB of heap; taken over
 * it holds less than the 24 KiB by which {@link LiveSettings} counts places. The
 * benchmark Crowd weighs it.
 */
final class StreamLine implements Line, InternalHttpUpgradeHandler {

	/** What a follower sends is of no interest, so all lines read into the same bytes. */
	private static final byte[] IGNORED = new byte[512];

	private @Nullable Follower follower;

	private volatile @Nullable SocketWrapperBase<?> socket;

	private boolean draining;

	/** Say who listens; before the connection is taken over. */
	void carry(Follower listening) {
		this.follower = listening;
	}

	@Override
	public void setSocketWrapper(SocketWrapperBase<?> wrapper) {
		this.socket = wrapper;
	}

	@Override
	public void init(WebConnection connection) {
		listener().onWritePossible();
	}

	@Override
	public SocketState upgradeDispatch(SocketEvent event) {
		try {
			if (event == SocketEvent.OPEN_READ) {
				return hangsUp() ? gone() : SocketState.UPGRADED;
			}
			if (event == SocketEvent.OPEN_WRITE) {
				drain();
				return SocketState.UPGRADED;
			}
		}
		catch (IOException ex) {
			// Gone is gone, whatever the reason.
			return gone();
		}
		return gone();
	}

	private boolean hangsUp() throws IOException {
		int count = 1;
		while (count > 0) {
			count = socket().read(false, IGNORED, 0, IGNORED.length);
		}
		return count < 0;
	}

	private void drain() throws IOException {
		Follower listening = listener();
		synchronized (listening) {
			this.draining = false;
			flush();
			if (!this.draining) {
				listening.onWritePossible();
			}
		}
	}

	private SocketState gone() {
		listener().leave();
		return SocketState.CLOSED;
	}

	@Override
	public boolean isReady() {
		return !this.draining && socket().isReadyForWrite();
	}

	@Override
	public void write(byte[] bytes) throws IOException {
		socket().write(false, bytes, 0, bytes.length);
	}

	@Override
	public void flush() throws IOException {
		if (socket().flush(false)) {
			this.draining = true;
			socket().registerWriteInterest();
		}
	}

	@Override
	public void end() {
		SocketWrapperBase<?> open = this.socket;
		if (open != null) {
			open.close();
		}
	}

	@Override
	public void destroy() {
		listener().leave();
	}

	@Override
	public void pause() {
		listener().leave();
	}

	@Override
	public void timeoutAsync(long now) {
		// Signs of life tell who is gone.
	}

	@Override
	public void setSslSupport(SSLSupport sslSupport) {
		// Who follows is of no interest.
	}

	private SocketWrapperBase<?> socket() {
		SocketWrapperBase<?> open = this.socket;
		if (open == null) {
			throw new IllegalStateException("Not taken over yet");
		}
		return open;
	}

	private Follower listener() {
		Follower listening = this.follower;
		if (listening == null) {
			throw new IllegalStateException("Nobody listens");
		}
		return listening;
	}

}
