package rimebook.panels;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.springframework.stereotype.Service;

import rimebook.accounts.CodeGuessing;
import rimebook.shared.Actor;

/**
 * What the referee is shown of seat codes that are guessed at. Another code for a seat is
 * {@link Panels#issueCode}.
 */
@Service
public class SeatGuesses {

	private final CodeGuessing guessing;

	SeatGuesses(CodeGuessing guessing) {
		this.guessing = guessing;
	}

	/** The devices that were stopped within the last quarter of an hour, newest first. */
	public List<Guess> recent() {
		return this.guessing.recent().stream().map(SeatGuesses::guess).toList();
	}

	/**
	 * Let a device try a code again at once.
	 * @throws rimebook.shared.NotFoundException if it was never stopped
	 */
	public void free(UUID id, Actor actor) {
		this.guessing.free(id, actor);
	}

	private static Guess guess(CodeGuessing.GuessedFrom from) {
		CodeGuessing.GuessedFrom.Stop stop = from.stop();
		return new Guess(from.id(), from.address(), from.device(), new Stop(stop.at(), stop.until(), stop.stopped()),
				from.freedBy());
	}

	/**
	 * A device from which seat codes were guessed until it was stopped.
	 *
	 * @param freedBy who let it try again before, empty for nobody
	 */
	public record Guess(UUID id, String address, String device, Stop stop, String freedBy) {
	}

	/**
	 * That a device was stopped.
	 *
	 * @param at since when, UTC
	 * @param until when it may try again by itself, UTC
	 * @param stopped whether it has to wait now
	 */
	public record Stop(Instant at, Instant until, boolean stopped) {
	}

}
