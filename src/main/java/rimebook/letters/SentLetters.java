package rimebook.letters;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What went to whom, when and with which words, and what is done about a letter that did
 * not go. The record is told how many letters and never to whom.
 */
@Service
@Transactional(readOnly = true)
public class SentLetters {

	private final LetterStore store;

	private final Carrier carrier;

	private final TextStore texts;

	private final Competitions competitions;

	private final Acts acts;

	SentLetters(LetterStore store, Carrier carrier, TextStore texts, Competitions competitions, Acts acts) {
		this.store = store;
		this.carrier = carrier;
		this.texts = texts;
		this.competitions = competitions;
		this.acts = acts;
	}

	/** All sendings of a competition, the newest first. */
	public List<SendingView> of(CompetitionId competition) {
		return this.store.ofCompetition(competition);
	}

	/**
	 * One sending.
	 * @throws NotFoundException if there is none
	 */
	public SendingView sending(UUID id) {
		return this.store.sending(id).orElseThrow(() -> NotFoundException.of("letter", id));
	}

	/** The letters of a sending. */
	public List<LetterView> letters(UUID sending) {
		return this.store.ofSending(sending);
	}

	/**
	 * One letter.
	 * @throws NotFoundException if there is none
	 */
	public LetterView letter(UUID id) {
		return this.store.letter(id).orElseThrow(() -> NotFoundException.of("letter", id));
	}

	/** How many letters of each competition somebody has to look at. */
	public Map<CompetitionId, Integer> troubles() {
		return this.store.troubles();
	}

	/**
	 * Take a letter back that did not go yet.
	 * @throws ConflictException {@code letter-gone} if it does not wait any more
	 */
	@Transactional
	public void cancel(UUID id, Actor actor) {
		SendingView sending = sending(letter(id).sending());
		if (!this.store.cancel(id, this.acts.now())) {
			throw new ConflictException("letter-gone", Sentence.of("letters.gone"));
		}
		tellCancelled(sending, 1, actor);
	}

	/**
	 * Take back whatever of a sending did not go yet.
	 * @return how many letters
	 * @throws ConflictException {@code letter-gone} if none waits any more
	 */
	@Transactional
	public int cancelAll(UUID id, Actor actor) {
		SendingView sending = sending(id);
		int cancelled = this.store.cancelAll(id, this.acts.now());
		if (cancelled == 0) {
			throw new ConflictException("letter-gone", Sentence.of("letters.gone"));
		}
		tellCancelled(sending, cancelled, actor);
		return cancelled;
	}

	private void tellCancelled(SendingView sending, int letters, Actor actor) {
		this.acts.publish(AuditedChange.of(actor, "letters", sending.competition(), "letters.cancelled")
			.from(sending.kind().inWords(letters) + ": waiting", "taken back before it went"));
	}

	/**
	 * Send a letter again with the same words, as a letter of its own.
	 * @param mail the address it goes to now
	 * @return the letter that goes
	 * @throws ConflictException {@code letter-not-again} if it has still to go by itself,
	 * was emptied, or was sent again already; {@code letters-no-server}
	 * @throws RuleViolationException naming the field that does not fit
	 */
	@Transactional
	public UUID again(UUID id, String mail, Actor actor) {
		String address = Required.text("mail", mail, 120);
		if (!address.matches("[^@\\s]+@[^@\\s]+")) {
			throw RuleViolationException.ofField("field-form", "mail", Sentence.of("letters.no-mail"));
		}
		if (!this.carrier.isThere()) {
			throw new ConflictException("letters-no-server", Sentence.of("letters.no-server"));
		}
		SendingView before = sending(letter(id).sending());
		this.competitions.holding(before.competition());
		LetterView letter = letter(id);
		if (!letter.maySendAgain()) {
			throw new ConflictException("letter-not-again", Sentence.of("letters.not-again"));
		}
		Instant now = this.acts.now();
		SendingView sending = new SendingView(this.acts.nextId(), before.competition(), before.kind(),
				SendingView.Way.MAIL, new SendingView.Made(1, actor.name(), now), Map.of());
		this.store.add(sending);
		UUID again = this.acts.nextId();
		this.store.add(again, sending,
				new LetterStore.Written(letter.entry(), new Addressees.Addressee(letter.to().name(), address),
						letter.language(), letter.content(), letter.linkAt(), id));
		this.acts.publish(AuditedChange.of(actor, "letters", before.competition(), "letters.mailed-again")
			.to(before.kind().inWords(1)));
		return again;
	}

	/** How many letters and texts of a competition would be emptied. */
	public Emptied there(CompetitionId competition) {
		return new Emptied(this.store.filled(competition), this.texts.count(competition));
	}

	/**
	 * Delete names, addresses and texts; that letters were sent stays. What waits does
	 * not go any more.
	 */
	@Transactional
	public Emptied empty(CompetitionId competition, Actor actor) {
		this.competitions.holding(competition);
		Emptied emptied = new Emptied(this.store.empty(competition, this.acts.now()), this.texts.delete(competition));
		if (emptied.isSomething()) {
			this.acts.publish(AuditedChange.of(actor, "letters", competition, "letters.deleted")
				.from(emptied.letters() + " letters, " + emptied.texts() + " versions of texts",
						"names, addresses and texts deleted"));
		}
		return emptied;
	}

	/**
	 * What was deleted.
	 *
	 * @param letters of how many letters
	 * @param texts how many versions of texts
	 */
	public record Emptied(int letters, int texts) {

		/** Tell whether it is anything. */
		public boolean isSomething() {
			return this.letters > 0 || this.texts > 0;
		}

	}

}
