package rimebook.accounts;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Tablets that ask for a seat whose own tablet is alive: the referee says yes or no. One
 * tablet a seat asks, the newest. A seat that falls quiet meanwhile is given at once.
 */
@Service
public class SeatTakeovers {

	/** A tablet that was heard within this time is alive. */
	static final Duration ALIVE = Duration.ofMinutes(1);

	/** A question older than this is nobody's any more. */
	static final Duration KEPT = Duration.ofMinutes(10);

	private final SeatCodeRepository codes;

	private final Acts acts;

	SeatTakeovers(SeatCodeRepository codes, Acts acts) {
		this.acts = acts;
		this.codes = codes;
	}

	/**
	 * Tell a tablet how it stands with the seat that it asked for.
	 * @param token what it was given when it asked
	 */
	@Transactional
	public Answer look(String token) {
		Instant now = this.acts.now();
		String digest = SecretTokens.digest(token);
		return this.codes.findByAskedDigest(digest)
			.map((code) -> look(code, now))
			.orElseGet(() -> this.codes.findByDeviceDigest(digest).isPresent() ? Answer.TAKEN : Answer.GONE);
	}

	private Answer look(SeatCode code, Instant now) {
		if (code.isAskedRefused()) {
			return Answer.REFUSED;
		}
		Question question = code.question();
		if (question.askedAt().isBefore(now.minus(KEPT))) {
			return Answer.GONE;
		}
		if (code.isLive(now.minus(ALIVE))) {
			return Answer.WAITING;
		}
		code.giveToAsking(now);
		this.acts.publish(AuditedChange.of(tablet(question), "seat", question.seat(), "seat.paired")
			.from(question.holder(), question.device())
			.because("The tablet that had the seat was not heard for a minute."));
		return Answer.TAKEN;
	}

	private static Actor tablet(Question question) {
		return new Actor("seat:" + question.seat(), question.label(), Role.JUDGE.word(), question.device());
	}

	/** The tablets that wait for the referee's word, the oldest question first. */
	@Transactional(readOnly = true)
	public List<Question> open() {
		return this.codes.findByAskedRefusedFalseAndAskedAtAfterOrderByAskedAt(this.acts.now().minus(KEPT))
			.stream()
			.map(SeatCode::question)
			.toList();
	}

	/**
	 * Answer a tablet that asks for a seat.
	 * @param askedAt the moment that names the question
	 * @param yes whether it gets the seat; the one that has it then no longer has
	 * @throws ConflictException {@code seat-question-gone} if it no longer asks
	 * @throws NotFoundException if there is no such seat
	 */
	@Transactional
	public void answer(UUID seat, Instant askedAt, boolean yes, Actor actor) {
		SeatCode code = this.codes.findBySeatId(seat).orElseThrow(() -> NotFoundException.of("seat", seat));
		if (!code.isAskedSince(askedAt)) {
			throw new ConflictException("seat-question-gone", Sentence.of("accounts.seat-question-gone"));
		}
		Question question = code.question();
		if (yes) {
			code.giveToAsking(this.acts.now());
		}
		else {
			code.refuseAsking();
		}
		this.acts.publish(AuditedChange.of(actor, "seat", seat, yes ? "seat.handed-over" : "seat.kept")
			.from(question.holder(), yes ? question.device() : question.holder() + "; refused: " + question.device()));
	}

	/**
	 * A second tablet that asks for a seat whose own tablet is alive.
	 *
	 * @param seat the seat's identity
	 * @param label the seat as printed on the record
	 * @param device the asking tablet's address and browser
	 * @param askedAt when it asked, UTC; names the question
	 * @param holder the address and browser of the tablet that has the seat
	 * @param heardAt when that one was heard last, UTC
	 */
	public record Question(UUID seat, String label, String device, Instant askedAt, String holder,
			@Nullable Instant heardAt) {
	}

	/** How it stands with a tablet that asked for a seat. */
	public enum Answer {

		/** The referee has not answered yet. */
		WAITING,

		/** It has the seat. */
		TAKEN,

		/** The referee said no. */
		REFUSED,

		/** Nobody knows the question any more: too old, or another tablet asked since. */
		GONE

	}

}
