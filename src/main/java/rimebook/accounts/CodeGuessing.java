package rimebook.accounts;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;

/**
 * Addresses from which seat codes are guessed at. Who guesses too often is stopped for a
 * minute on every node, the referee sees it, and can let the address try again at once,
 * since a judge with wet gloves mistypes too.
 */
@Service
public class CodeGuessing {

	private static final Duration STOP = Duration.ofMinutes(1);

	private static final Duration SHOWN = Duration.ofMinutes(15);

	/** As many as could matter; a stranger with many addresses leaves no more. */
	static final int MOST_KEPT = 1000;

	private final CodeStopRepository stops;

	private final AttemptTally tally;

	private final Acts acts;

	CodeGuessing(CodeStopRepository stops, AttemptTally tally, Acts acts) {
		this.acts = acts;
		this.stops = stops;
		this.tally = tally;
	}

	/** Tell whether an address may try a code now. */
	@Transactional(readOnly = true)
	public Permit door(String address) {
		Instant now = this.acts.now();
		return this.stops.findFirstByAddressOrderByStoppedAtDesc(address)
			.map((stop) -> new Permit(stop.isStopped(now) ? Duration.between(now, stop.until()) : Duration.ZERO,
					stop.turn()))
			.orElse(new Permit(Duration.ZERO, ""));
	}

	/**
	 * Stop an address for a minute, on record (summed up where it happens again and
	 * again); one that is stopped already stays so.
	 * @param device the address and kind of browser
	 * @return how long it has to wait
	 */
	@Transactional
	public Duration stop(String address, String device) {
		Instant now = this.acts.now();
		Optional<CodeStop> current = this.stops.findFirstByAddressOrderByStoppedAtDesc(address)
			.filter((stop) -> stop.isStopped(now));
		if (current.isPresent()) {
			return Duration.between(now, current.get().until());
		}
		this.stops.save(new CodeStop(this.acts.nextId(), address, device, now, now.plus(STOP)));
		this.stops.forgetBeyond(MOST_KEPT);
		AttemptTally.Count count = this.tally.count(AttemptTally.Kind.CODES, address);
		if (count.isWorthALine()) {
			this.acts.publish(AuditedChange
				.of(new Actor("Unknown", "nobody", device), "seat", "any seat", "seat.guessing-stopped")
				.to("too many wrong seat codes from this device within a minute, " + count.words()));
		}
		return STOP;
	}

	/**
	 * The addresses that were stopped within the last quarter of an hour, newest first.
	 */
	@Transactional(readOnly = true)
	public List<GuessedFrom> recent() {
		Instant now = this.acts.now();
		return this.stops.findByStoppedAtAfterOrderByStoppedAtDesc(now.minus(SHOWN))
			.stream()
			.map((stop) -> stop.view(now))
			.toList();
	}

	/**
	 * Let an address try again at once. Nothing changes where it may do so already.
	 * @throws NotFoundException if it was never stopped
	 */
	@Transactional
	public void free(UUID id, Actor actor) {
		CodeStop stop = this.stops.findById(id).orElseThrow(() -> NotFoundException.of("code-stop", id));
		Instant now = this.acts.now();
		if (stop.isStopped(now)) {
			stop.free(actor, now);
			this.acts.publish(AuditedChange.of(actor, "seat", "any seat", "seat.guessing-freed")
				.from("stopped: " + stop.address(), "may try a seat code again: " + stop.address()));
		}
	}

	/**
	 * An address from which seat codes were guessed until it was stopped.
	 *
	 * @param device the address and kind of browser
	 * @param stop since when and how long it was stopped
	 * @param freedBy who let it try again before, empty for nobody
	 */
	public record GuessedFrom(UUID id, String address, String device, Stop stop, String freedBy) {

		/**
		 * That an address was stopped.
		 *
		 * @param at when it was stopped
		 * @param until when it may try again by itself
		 * @param stopped whether it has to wait now
		 */
		public record Stop(Instant at, Instant until, boolean stopped) {
		}

	}

	/**
	 * Whether an address may try a seat code now.
	 *
	 * @param pause how long it has to wait, zero if not at all
	 * @param turn changes with each stop and each freeing: failures are counted anew from
	 * there
	 */
	public record Permit(Duration pause, String turn) {
	}

}
