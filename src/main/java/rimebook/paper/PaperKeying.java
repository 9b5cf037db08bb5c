package rimebook.paper;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardArrival;
import rimebook.performances.CardBooks;
import rimebook.performances.CountingPanels;
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

	private final PerformanceRegister performances;

	private final CardKeyings keyings;

	private final CardKeyingRepository written;

	private final List<PaperCards> papers;

	private final CountingPanels panels;

	private final CardBooks books;

	private final StillOpen stillOpen;

	private final Competitions competitions;

	private final Acts acts;

	PaperKeying(PerformanceRegister performances, CardKeyings keyings, CardKeyingRepository written,
			List<PaperCards> papers, CountingPanels panels, CardBooks books, StillOpen stillOpen,
			Competitions competitions, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.keyings = keyings;
		this.written = written;
		this.papers = papers;
		this.panels = panels;
		this.books = books;
		this.stillOpen = stillOpen;
		this.competitions = competitions;
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
		Sheet sheet = sheet(id, seatId);
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
		write(sheet, card, outcome, sequence, actor);
		return sheet(id, seatId).seen(actor);
	}

	private void requireTaken(Sheet sheet, PaperCards.KeyedCard card) {
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
		return performance.hasClosedCards() && !performance.takesCards()
				&& this.panels.of(segment).seats().stream().noneMatch((each) -> each.id().equals(seat.id()))
				&& !this.books.of(segment).missing(performance, seat).isEmpty();
	}

	private static KeyingOutcome outcome(PaperCards.KeyedCard card, Sheet sheet, Actor actor) {
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
		Sheet sheet = sheet(id, seatId);
		requireTaken(sheet, card);
		if (sheet.state().stage() != PaperState.Stage.DIFFER) {
			throw new ConflictException("nothing-to-settle", Sentence.of("paper.nothing-to-settle", sheet.spoken()));
		}
		ConflictException.requireSeen("card", seen, sheet.sight());
		if (sheet.state().isSaidByOthers(card, actor)) {
			write(sheet, card, KeyingOutcome.SETTLED, receive(card, sheet, sheet.said(), actor), actor);
		}
		else {
			this.acts.publish(line(sheet, "card.keyed", actor)
				.to(sheet.label() + ": settled by one; somebody else who says the same is missing"));
			write(sheet, card, KeyingOutcome.DIFFERS, sheet.state().card(), actor);
		}
		return sheet(id, seatId).seen(actor);
	}

	/**
	 * Receive the card unless the one that counts says the same.
	 * @param differed what was said to be on the paper, empty where people agreed
	 * @return the version that counts now
	 */
	private int receive(PaperCards.KeyedCard card, Sheet sheet, String differed, Actor actor) {
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

	private void write(Sheet sheet, PaperCards.KeyedCard card, KeyingOutcome outcome, int sequence, Actor actor) {
		this.written.save(new CardKeying(this.acts.nextId(), sheet.performance().id(),
				new CardKeying.Keyed(sheet.seat().id(), sheet.state().keyings() + 1, card),
				new CardKeying.Upshot(outcome, sequence), actor, this.acts.now()));
	}

	/**
	 * How far each seat's card of a performance has come, as one person may see it: of
	 * what others keyed nothing, until it has to be settled.
	 */
	@Transactional(readOnly = true)
	public List<SeatPaper> ofPerformance(PerformanceId id, Actor viewer) {
		PerformanceView performance = this.performances.find(id);
		return sheets(performance, senders(performance.segment())).stream().map((sheet) -> sheet.seen(viewer)).toList();
	}

	/** The lines that a card of this performance has now; none before it is called. */
	@Transactional(readOnly = true)
	public List<PaperCards.CardLine> lines(PerformanceId id) {
		PerformanceView performance = this.performances.find(id);
		return paper(performance).map((paper) -> paper.lines(performance)).orElse(List.of());
	}

	/** What waits in a segment: "No. 4: Judge 2 keyed once, by Kai Berg; …". */
	@Transactional(readOnly = true)
	public List<Sentence> unsettled(SegmentId segment) {
		List<PerformanceView> taking = this.performances.takingCards(segment);
		if (taking.isEmpty()) {
			return List.of();
		}
		List<SeatView> senders = senders(segment);
		return taking.stream()
			.flatMap((performance) -> sheets(performance, senders).stream()
				.filter((sheet) -> sheet.state().isUnsettled())
				.map((sheet) -> Sentence.of("paper.waits", performance.startNumber(), sheet.spoken(),
						sheet.state().spoken())))
			.toList();
	}

	private Sheet sheet(PerformanceId id, SeatId seat) {
		PerformanceView performance = this.performances.hold(id);
		return sheets(performance, senders(performance.segment())).stream()
			.filter((sheet) -> sheet.seat().id().equals(seat))
			.findFirst()
			.orElseThrow(CardArrival::notOfSeat);
	}

	/** The seats that have a card, in order. */
	private List<SeatView> senders(SegmentId segment) {
		return this.panels.of(segment).senders();
	}

	private List<Sheet> sheets(PerformanceView performance, List<SeatView> senders) {
		return paper(performance).map((paper) -> sheets(performance, paper, senders)).orElse(List.of());
	}

	private List<Sheet> sheets(PerformanceView performance, PaperCards paper, List<SeatView> senders) {
		Map<SeatId, PaperCards.HeldCard> held = paper.held(performance);
		CardKeyings.OfPerformance keyed = this.keyings.of(performance.id());
		return senders.stream()
			.map((seat) -> new Sheet(performance, paper, seat, held.get(seat.id()),
					keyed.state(seat.id(), held.get(seat.id())), keyed.of(seat.id())))
			.toList();
	}

	/** Empty where cards of that way of judging are never on paper. */
	private Optional<PaperCards> paper(PerformanceView performance) {
		EventView event = this.competitions.eventOf(performance.segment());
		return this.papers.stream().filter((paper) -> paper.isFor(event)).findFirst();
	}

	private static AuditedChange line(Sheet sheet, String action, Actor actor) {
		return AuditedChange.of(actor, "performance", sheet.performance().id(), action);
	}

	/** One seat's card of one performance with all that is known of it. */
	private record Sheet(PerformanceView performance, PaperCards paper, SeatView seat,
			PaperCards.@Nullable HeldCard held, PaperState state, List<CardKeying> keyings) {

		Sentence spoken() {
			return this.seat.spoken();
		}

		String label() {
			return this.seat.label();
		}

		String words(PaperCards.KeyedCard card) {
			return this.paper.words(this.performance, card);
		}

		String heldInWords() {
			return (this.held != null) ? words(this.held.marks()) : "no card";
		}

		/** Who keyed what is received now, for the record. */
		String together(Actor actor) {
			PaperState.Voice other = this.state.other(actor);
			return "Keyed in from paper by " + ((other != null) ? other.by().words() + " and " : "") + actor.name()
					+ ((other == null) ? ", as received before." : ".");
		}

		/** What each of them says, for the record. */
		String said() {
			return this.state.voices()
				.stream()
				.map((voice) -> voice.by().words() + " " + words(voice.marks()))
				.collect(Collectors.joining("; "));
		}

		SeatPaper.Sight sight() {
			return new SeatPaper.Sight(this.state.keyings(), this.state.card());
		}

		SeatPaper seen(Actor viewer) {
			boolean differs = this.state.stage() == PaperState.Stage.DIFFER;
			return new SeatPaper(this.seat, SeatPaper.Stage.valueOf(this.state.stage().name()),
					new SeatPaper.Said(this.state.voices().stream().map(PaperState.Voice::by).toList(),
							this.state.voices().stream().anyMatch((voice) -> voice.isBy(viewer)),
							differs ? this.state.voices().stream().map(SeatPaper.Voice::of).toList() : List.of(),
							own(viewer)),
					this.held, sight());
		}

		private PaperCards.@Nullable KeyedCard own(Actor viewer) {
			return this.keyings.stream()
				.filter((keying) -> keying.isBy(viewer))
				.reduce((older, newer) -> newer)
				.map(CardKeying::marks)
				.orElse(null);
		}

	}

}
