package rimebook.paper;

import java.util.List;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardBooks;
import rimebook.performances.PerformanceEvent;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Takes paper cards that two people key in, neither seeing what the other typed. Equal
 * keyings are the received card at once; others are settled by looking at the paper
 * again. What a tablet sent in between neither wins nor loses unseen.
 */
@Service
public class PaperKeying {

	private final PaperSheets sheets;

	private final CardKeyingRepository written;

	private final CardBooks books;

	private final StillOpen stillOpen;

	private final Acts acts;

	PaperKeying(PaperSheets sheets, CardKeyingRepository written, CardBooks books, StillOpen stillOpen, Acts acts) {
		this.acts = acts;
		this.sheets = sheets;
		this.written = written;
		this.books = books;
		this.stillOpen = stillOpen;
	}

	/**
	 * Key in the card of a seat; of a team whose cards are closed only one that does not
	 * count and is not whole, so that its seat can take over, or return. Keyed again by
	 * the same person it replaces what that person keyed; nobody else's.
	 * @return how far the card has come
	 * @throws ConflictException {@code keyings-differ} while a difference waits to be
	 * settled, {@code card-closed} or {@code performance-not-open} if cards are not taken
	 * now
	 * @throws rimebook.shared.RuleViolationException naming the line that cannot be so
	 * @throws NotFoundException if there is no such performance for this seat
	 */
	@Transactional
	public SeatPaper key(PerformanceId id, SeatId seatId, PaperCards.KeyedCard card, Actor actor) {
		PaperSheets.Sheet sheet = this.sheets.hold(id, seatId);
		requireTaken(sheet, card);
		if (sheet.state().stage() == PaperState.Stage.DIFFER) {
			throw new ConflictException("keyings-differ", Sentence.of("paper.differs", sheet.spoken()));
		}
		KeyingOutcome outcome = outcome(card, sheet, actor);
		int sequence = (outcome == KeyingOutcome.AGREED) ? receive(card, sheet, "", actor) : sheet.state().card();
		if (outcome != KeyingOutcome.AGREED) {
			String words = (outcome == KeyingOutcome.WAITING) ? "keyed once; second keying missing"
					: "keyed; it differs from what was keyed or sent before";
			this.acts.publish(line(sheet, "card.keyed", actor).to(sheet.label() + ": " + words));
		}
		write(sheet, card, new CardKeying.Upshot(outcome, sequence), actor);
		return this.sheets.hold(id, seatId).seen(actor);
	}

	private void requireTaken(PaperSheets.Sheet sheet, PaperCards.KeyedCard card) {
		if (isAddedLater(sheet.performance(), sheet.seat())) {
			this.stillOpen.require(sheet.performance().segment());
		}
		else {
			PerformanceRegister.requireOnIce(sheet.performance());
		}
		sheet.paper().require(sheet.performance(), card);
	}

	private boolean isAddedLater(PerformanceView performance, SeatView seat) {
		SegmentId segment = performance.segment();
		return performance.hasClosedCards() && !performance.takesCards() && !this.sheets.counts(seat, segment)
				&& !this.books.of(segment).missing(performance, seat).isEmpty();
	}

	private static KeyingOutcome outcome(PaperCards.KeyedCard card, PaperSheets.Sheet sheet, Actor actor) {
		PaperCards.HeldCard held = sheet.held();
		if (held != null && held.isFromTablet() && !card.agreesWith(held.marks())) {
			return KeyingOutcome.DIFFERS;
		}
		PaperState.Voice other = sheet.state().other(actor);
		if (other != null) {
			return card.agreesWith(other.marks()) ? KeyingOutcome.AGREED : KeyingOutcome.DIFFERS;
		}
		return (held != null && held.says(card)) ? KeyingOutcome.AGREED : KeyingOutcome.WAITING;
	}

	/**
	 * Settle what is on the paper of a seat, chosen from what was keyed and sent or typed
	 * anew. What nobody else says of a line takes the place of this person's own keying
	 * and goes on waiting for somebody who says the same.
	 * @param seen what the person was looking at
	 * @return how far the card has come
	 * @throws ConflictException {@code nothing-to-settle}, or stale if something was
	 * keyed or sent since
	 */
	@Transactional
	public SeatPaper settle(PerformanceId id, SeatId seatId, SeatPaper.Sight seen, PaperCards.KeyedCard card,
			Actor actor) {
		PaperSheets.Sheet sheet = this.sheets.hold(id, seatId);
		requireTaken(sheet, card);
		if (sheet.state().stage() != PaperState.Stage.DIFFER) {
			throw new ConflictException("nothing-to-settle", Sentence.of("paper.nothing-to-settle", sheet.spoken()));
		}
		ConflictException.requireSeen("card", seen, sheet.sight());
		if (sheet.state().isSaidByOthers(card, actor)) {
			int sequence = receive(card, sheet, sheet.said(), actor);
			write(sheet, card, new CardKeying.Upshot(KeyingOutcome.SETTLED, sequence), actor);
		}
		else {
			this.acts.publish(line(sheet, "card.keyed", actor)
				.to(sheet.label() + ": settled by one; somebody else who says the same is missing"));
			write(sheet, card, new CardKeying.Upshot(KeyingOutcome.DIFFERS, sheet.state().card()), actor);
		}
		return this.sheets.hold(id, seatId).seen(actor);
	}

	/**
	 * Receive the card unless the one that counts says the same.
	 * @param differed what was said to be on the paper, empty where people agreed
	 * @return the version that counts now
	 */
	private int receive(PaperCards.KeyedCard card, PaperSheets.Sheet sheet, String differed, Actor actor) {
		PaperCards.HeldCard held = sheet.held();
		AuditedChange line = line(sheet, differed.isEmpty() ? "card.received" : "card.settled", actor)
			.from(sheet.label() + ": " + (differed.isEmpty() ? sheet.heldInWords() : differed),
					sheet.label() + ": " + sheet.words(card))
			.because(differed.isEmpty() ? sheet.together(actor) : "Settled by looking at the paper again.");
		if (held != null && held.says(card)) {
			this.acts.publish(line);
			return held.sequence();
		}
		int sequence = sheet.state().card() + 1;
		sheet.paper().keep(sheet.performance(), sheet.seat().id(), sequence, card);
		this.acts
			.publish(new PerformanceEvent.CardReceived(sheet.performance().id(), sheet.performance().segment(), line));
		return sequence;
	}

	private void write(PaperSheets.Sheet sheet, PaperCards.KeyedCard card, CardKeying.Upshot upshot, Actor actor) {
		this.written.save(new CardKeying(this.acts.nextId(), sheet.performance().id(),
				new CardKeying.Keyed(sheet.seat().id(), sheet.state().keyings() + 1, card), upshot, actor,
				this.acts.now()));
	}

	/**
	 * How far each seat's card of a performance has come, as one person may see it: of
	 * what others keyed nothing, until it has to be settled.
	 */
	@Transactional(readOnly = true)
	public List<SeatPaper> ofPerformance(PerformanceId id, Actor viewer) {
		return this.sheets.of(id).stream().map((sheet) -> sheet.seen(viewer)).toList();
	}

	/** The lines that a card of this performance has now; none before it is called. */
	@Transactional(readOnly = true)
	public List<PaperCards.CardLine> lines(PerformanceId id) {
		return this.sheets.lines(id);
	}

	/** What waits in a segment: "No. 4: Judge 2 keyed once, by Kai Berg; …". */
	@Transactional(readOnly = true)
	public List<Sentence> unsettled(SegmentId segment) {
		return this.sheets.takingCards(segment)
			.stream()
			.filter((sheet) -> sheet.state().isUnsettled())
			.map((sheet) -> Sentence.of("paper.waits", sheet.performance().startNumber(), sheet.spoken(),
					sheet.state().spoken()))
			.toList();
	}

	private static AuditedChange line(PaperSheets.Sheet sheet, String action, Actor actor) {
		return AuditedChange.of(actor, "performance", sheet.performance().id(), action);
	}

}
