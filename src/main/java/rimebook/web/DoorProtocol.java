package rimebook.web;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

import org.apache.coyote.Constants;
import org.apache.coyote.Processor;
import org.apache.coyote.Request;
import org.apache.coyote.http11.Http11NioProtocol;
import org.apache.tomcat.util.net.NioChannel;
import org.apache.tomcat.util.net.NioEndpoint.NioSocketWrapper;
import org.apache.tomcat.util.net.SocketWrapperBase;
import org.jspecify.annotations.Nullable;

import rimebook.pages.DoorAnswers;

/**
 * HTTP/1.1 that hangs up on silent connections before there is no room for others. The
 * server's own time-outs begin anew with every byte; these do not. Public, since the
 * server makes it by its name.
 */
public class DoorProtocol extends Http11NioProtocol {

	/** How many requests may be half here; each has buffers of its own. */
	private static final int MOST_HALF_HERE = 500;

	private static final Set<Integer> STAGES_OF_A_HEAD = Set.of(Constants.STAGE_PARSE, Constants.STAGE_ENDED);

	private final DoorEndpoint endpoint;

	/** As the server makes it. */
	public DoorProtocol() {
		this(new DoorEndpoint());
	}

	private DoorProtocol(DoorEndpoint endpoint) {
		super(endpoint);
		this.endpoint = endpoint;
	}

	/** Answer from this before anything else is asked. */
	void answerFrom(Supplier<@Nullable DoorAnswers> answers, Duration patience) {
		this.endpoint.answerFrom(answers, patience.toMillis());
	}

	/** Hang up on whoever is too slow, and on the silent ones if the door is crowded. */
	void sweep(Duration patience) {
		List<Half> halves = new ArrayList<>();
		List<Silent> silent = new ArrayList<>();
		for (SocketWrapperBase<NioChannel> connection : getEndpoint().getConnections()) {
			if (connection.getCurrentProcessor() == null) {
				silent.add(new Silent(connection, lastRead(connection)));
			}
			else if (connection.getCurrentProcessor() instanceof Processor processor && isHalfHere(processor)) {
				halves.add(new Half(connection, processor.getRequest().getStartTimeNanos()));
			}
		}
		hangUpOnHalves(halves, System.nanoTime() - patience.toNanos());
		makeRoom(silent);
		this.endpoint.tidy();
	}

	private static long lastRead(SocketWrapperBase<NioChannel> connection) {
		return (connection instanceof NioSocketWrapper socket) ? socket.getLastRead() : 0;
	}

	/** Between two pieces of a head the server says that the request has ended. */
	private static boolean isHalfHere(Processor processor) {
		Request request = processor.getRequest();
		return request != null && request.getStartTimeNanos() > 0 && !processor.isAsync() && !processor.isUpgrade()
				&& STAGES_OF_A_HEAD.contains(request.getRequestProcessor().getStage());
	}

	private static void hangUpOnHalves(List<Half> halves, long latest) {
		halves.sort(Comparator.comparingLong(Half::since));
		int tooMany = halves.size() - MOST_HALF_HERE;
		for (int i = 0; i < halves.size(); i++) {
			if (i < tooMany || halves.get(i).since() - latest < 0) {
				halves.get(i).connection().close();
			}
		}
	}

	/** From four fifths of all places down to three fifths, the longest silent first. */
	private void makeRoom(List<Silent> silent) {
		if (getConnectionCount() < getMaxConnections() * 4L / 5) {
			return;
		}
		silent.sort(Comparator.comparingLong(Silent::since));
		long tooMany = getConnectionCount() - getMaxConnections() * 3L / 5;
		silent.stream().limit(tooMany).forEach((each) -> each.connection().close());
	}

	private record Half(SocketWrapperBase<NioChannel> connection, long since) {
	}

	private record Silent(SocketWrapperBase<NioChannel> connection, long since) {
	}

}
