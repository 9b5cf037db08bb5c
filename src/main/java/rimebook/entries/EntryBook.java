package rimebook.entries;

import java.util.Optional;

import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** Writes single entries, for a competition whose row is held. */
@Component
class EntryBook {

	private final EntryRepository entries;

	private final TeamRegister register;

	private final EntryWindow window;

	private final Competitions competitions;

	private final Acts acts;

	EntryBook(EntryRepository entries, TeamRegister register, EntryWindow window, Competitions competitions,
			Acts acts) {
		this.competitions = competitions;
		this.acts = acts;
		this.entries = entries;
		this.register = register;
		this.window = window;
	}

	/** The same club may be written down for another competition at the same moment. */
	EntryView enter(CompetitionView competition, EnterTeam order, Actor actor) {
		String lateReason = this.window.admit(competition, order.event(), order.lateReason());
		try {
			return entered(order, lateReason, actor);
		}
		catch (DataIntegrityViolationException ex) {
			throw new ConflictException("entry-meanwhile", "team", Sentence.of("entries.meanwhile"));
		}
	}

	private EntryView entered(EnterTeam order, String lateReason, Actor actor) {
		Team team = this.register.team(order, actor);
		Optional<Entry> known = this.entries.findByEventIdAndTeam(order.event().value(), team);
		String before = known.map((entry) -> "withdrawn: " + entry.withdrawnReason()).orElse("");
		Entry entry = known.orElseGet(() -> new Entry(this.acts.nextId(), order.event(), team));
		entry.enter(lateReason, this.acts.now());
		this.entries.saveAndFlush(entry);
		AuditedChange change = AuditedChange.of(actor, "entry", entry.id(), "entry.entered")
			.from(before, entry.inWords())
			.because(lateReason);
		this.acts.publish(new EntryEvent.Entered(entry.id(), entry.event(), change));
		return entry.view();
	}

	EntryView withdraw(Entry entry, int version, String reason, Actor actor) {
		entry.withdraw(version, reason, this.acts.now());
		this.entries.flush();
		AuditedChange change = AuditedChange.of(actor, "entry", entry.id(), "entry.withdrawn")
			.from(entry.inWords(), "withdrawn")
			.because(reason);
		this.acts.publish(new EntryEvent.Withdrawn(entry.id(), entry.event(), change));
		return entry.view();
	}

	EntryView move(Entry entry, int version, EventId event, String reason, Actor actor) {
		EventId from = entry.event();
		String before = entry.inWords() + ", " + this.competitions.event(from).name();
		entry.move(version, event);
		this.entries.flush();
		AuditedChange change = AuditedChange.of(actor, "entry", entry.id(), "entry.moved")
			.from(before, entry.inWords() + ", " + this.competitions.event(event).name())
			.because(reason);
		this.acts.publish(new EntryEvent.Moved(entry.id(), event, from, change));
		return entry.view();
	}

	EntryView reinstate(Entry entry, int version, String reason, Actor actor) {
		this.acts.publish(back(entry, version, reason, actor));
		return entry.view();
	}

	/** Take a withdrawal back, leaving it to the caller to say so. */
	EntryEvent.Reinstated back(Entry entry, int version, String reason, Actor actor) {
		String before = "withdrawn: " + entry.withdrawnReason();
		entry.reinstate(version);
		this.entries.flush();
		AuditedChange change = AuditedChange.of(actor, "entry", entry.id(), "entry.reinstated")
			.from(before, entry.inWords())
			.because(reason);
		return new EntryEvent.Reinstated(entry.id(), entry.event(), change);
	}

}
