package rimebook.entries;

import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Lets a team skate in another event of the competition. Before its draw the entry goes
 * over with all that hangs on it. Once the team was drawn, its number there stays empty:
 * it withdraws, and is entered into the other event anew. Both are taken back: the one by
 * the same act, the other by a withdrawal there and the return here.
 */
@Service
@Transactional(readOnly = true)
public class EventChange {

	private final Competitions competitions;

	private final EntryRepository entries;

	private final EntryBook book;

	private final EntryWindow window;

	EventChange(Competitions competitions, EntryRepository entries, EntryBook book, EntryWindow window) {
		this.competitions = competitions;
		this.entries = entries;
		this.book = book;
		this.window = window;
	}

	/**
	 * Let it.
	 * @return the entry in the other event
	 * @throws ConflictException if the version is stale; {@code already-withdrawn};
	 * {@code already-entered} or {@code withdrawn-there} if the team has an entry in the
	 * other event; what refuses an entry there or, after the draw, a withdrawal here
	 * @throws RuleViolationException {@code late-reason-missing}; {@code event-elsewhere}
	 * if it is none of the other events of the competition
	 */
	@Transactional
	public EntryView move(Move order, Actor actor) {
		EventId from = eventOf(order.entry());
		CompetitionView competition = this.competitions.holding(from);
		this.window.checkLeave(from);
		Entry entry = found(order.entry());
		EntryView view = entry.view();
		ConflictException.requireSeen("entry", order.version(), view.version());
		if (!view.isEntered()) {
			throw new ConflictException("already-withdrawn",
					Sentence.of("entries.already-withdrawn", view.team().name()));
		}
		if (order.event().equals(from)
				|| !this.competitions.event(order.event()).competition().equals(competition.id())) {
			throw RuleViolationException.ofField("event-elsewhere", "event", Sentence.of("entries.event-elsewhere"));
		}
		checkNotThere(order.event(), entry);
		this.window.admit(competition, order.event(), order.lateReason());
		String reason = order.lateReason();
		if (staying(order.entry()).isEmpty()) {
			return this.book.move(entry, order.version(), order.event(), reason, actor);
		}
		this.window.checkWithdrawal(view);
		this.book.withdraw(entry, order.version(), EntryWindow.late(reason), actor);
		TeamView team = view.team();
		return this.book.enter(competition,
				new EnterTeam(order.event(), team.club().name(), team.club().town(), team.name(), "", reason), actor);
	}

	/**
	 * Why the team would withdraw and be entered anew in the other event; empty where its
	 * entry goes over.
	 */
	public Optional<Sentence> staying(EntryId entry) {
		return this.window.staysInEvent(found(entry).view());
	}

	private void checkNotThere(EventId event, Entry entry) {
		this.entries.findByEventIdAndTeam(event.value(), entry.team()).ifPresent((there) -> {
			boolean entered = there.view().isEntered();
			throw new ConflictException(entered ? "already-entered" : "withdrawn-there", "event", Sentence
				.of(entered ? "entries.already-entered" : "entries.withdrawn-there", there.view().team().name()));
		});
	}

	private Entry found(EntryId id) {
		return this.entries.findById(id.value()).orElseThrow(() -> NotFoundException.of("entry", id));
	}

	private EventId eventOf(EntryId id) {
		return this.entries.eventOf(id.value()).map(EventId::new).orElseThrow(() -> NotFoundException.of("entry", id));
	}

	/**
	 * The order to let a team skate in another event.
	 *
	 * @param version as it was read, so that nobody overwrites another's change
	 * @param lateReason why it is done after entries closed, up to 500 characters; empty
	 * while they are open
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record Move(EntryId entry, int version, EventId event, String lateReason) {

		public Move {
			lateReason = Required.optional("lateReason", lateReason, 500);
		}

	}

}
