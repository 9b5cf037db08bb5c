package rimebook.entries;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The teams of each event. Entering and withdrawing take hold of the competition first,
 * so two people at it at once come one after the other.
 */
@Service
@Transactional(readOnly = true)
public class Entries {

	private static final Comparator<EntryView> BY_TEAM = Comparator
		.comparing((EntryView entry) -> entry.team().name(), String.CASE_INSENSITIVE_ORDER)
		.thenComparing((entry) -> entry.team().club().name(), String.CASE_INSENSITIVE_ORDER);

	private final Competitions competitions;

	private final EntryBook book;

	private final EntryWindow window;

	private final EntryRepository entries;

	private final ClubRepository clubs;

	Entries(Competitions competitions, EntryBook book, EntryWindow window, EntryRepository entries,
			ClubRepository clubs) {
		this.competitions = competitions;
		this.book = book;
		this.window = window;
		this.entries = entries;
		this.clubs = clubs;
	}

	/**
	 * Enter a team into an event. A team that had withdrawn comes back under the same
	 * entry.
	 * @throws ConflictException {@code already-entered}; {@code entries-not-open};
	 * {@code entry-refused} with the reason another module gives; {@code entry-meanwhile}
	 * if somebody wrote down the same club or team at the same moment
	 * @throws RuleViolationException {@code late-reason-missing}; {@code club-town} if
	 * the club is known to be from another town
	 */
	@Transactional
	public EntryView enter(EnterTeam order, Actor actor) {
		return this.book.enter(this.competitions.holding(order.event()), order, actor);
	}

	/**
	 * Withdraw a team, before or after the draw.
	 * @param reason up to 500 characters
	 * @throws ConflictException if the version is stale, {@code already-withdrawn}, what
	 * {@link rimebook.competition.StillOpen} refuses, or {@code withdrawal-refused} with
	 * the reason another module gives
	 */
	@Transactional
	public EntryView withdraw(EntryId id, int version, String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		EventId event = eventOf(id);
		this.competitions.holding(event);
		this.window.checkLeave(event);
		Entry entry = found(id);
		this.window.checkWithdrawal(entry.view());
		return this.book.withdraw(entry, version, why, actor);
	}

	/**
	 * Take the withdrawal of a team back: it takes part as before, under the number it
	 * has where it was drawn.
	 * @param reason up to 500 characters
	 * @throws ConflictException if the version is stale, {@code not-withdrawn}, what
	 * {@link rimebook.competition.StillOpen} refuses, or {@code return-refused} with the
	 * reason another module gives
	 */
	@Transactional
	public EntryView reinstate(EntryId id, int version, String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		EventId event = eventOf(id);
		this.competitions.holding(event);
		this.window.checkLeave(event);
		Entry entry = found(id);
		this.window.checkReturn(entry.view());
		return this.book.reinstate(entry, version, why, actor);
	}

	/**
	 * Note that a team has withdrawn because its performance ended so; nothing happens
	 * where it has withdrawn already. The caller holds the competition.
	 */
	@Transactional(propagation = Propagation.MANDATORY)
	public void leave(EntryId id, String reason, Actor actor) {
		Entry entry = found(id);
		if (entry.view().isEntered()) {
			this.book.withdraw(entry, entry.view().version(), reason, actor);
		}
	}

	/**
	 * Note that a team takes part again because two officials took its withdrawal back;
	 * nothing happens where it takes part. The caller holds the competition.
	 * @return what the caller publishes once it has said what led to it
	 */
	@Transactional(propagation = Propagation.MANDATORY)
	public Optional<EntryEvent.Reinstated> comeBack(EntryId id, String reason, Actor actor) {
		Entry entry = found(id);
		return entry.view().isEntered() ? Optional.empty()
				: Optional.of(this.book.back(entry, entry.view().version(), reason, actor));
	}

	/** Why the withdrawal of a team cannot simply be taken back; empty if it can. */
	public Optional<Sentence> returnRefusal(EntryView entry) {
		return this.window.returnRefusal(entry);
	}

	/** All entries of an event, withdrawn ones among them, by team name. */
	public List<EntryView> ofEvent(EventId event) {
		return this.entries.findByEventIdIn(Set.of(event.value())).stream().map(Entry::view).sorted(BY_TEAM).toList();
	}

	/**
	 * All entries of these events with one question, withdrawn ones among them, by team
	 * name.
	 */
	public List<EntryView> ofEvents(Collection<EventId> events) {
		return this.entries.findByEventIdIn(events.stream().map(EventId::value).toList())
			.stream()
			.map(Entry::view)
			.sorted(BY_TEAM)
			.toList();
	}

	/** All entries of a team, in every competition, withdrawn ones among them. */
	public List<EntryView> ofTeam(TeamView.Id team) {
		return this.entries.findByTeamId(team.value()).stream().map(Entry::view).toList();
	}

	/**
	 * A number that goes up with every change of the entries of these events, the names
	 * of their teams and clubs included; 0 where nobody is entered.
	 */
	public int changes(Collection<EventId> events) {
		return Math.toIntExact(this.entries.changes(events.stream().map(EventId::value).toList()));
	}

	/**
	 * Why no team can be entered into an event now, not even late with a reason; empty if
	 * one can.
	 * @throws NotFoundException if there is no such event
	 */
	public Optional<Sentence> refusal(EventId event) {
		return this.window.refusal(this.competitions.competition(this.competitions.event(event).competition()), event);
	}

	/** Why no teams come from a file into an event, although single ones may. */
	public Optional<Sentence> importRefusal(EventId event) {
		return this.window.importRefusal(event);
	}

	/**
	 * The entry of that identity.
	 * @throws NotFoundException if there is none
	 */
	public EntryView entry(EntryId id) {
		return found(id).view();
	}

	/** All clubs by name, without those that turned out to be another one. */
	public List<ClubView> clubs() {
		return this.clubs.findByMergedIntoIsNull()
			.stream()
			.map(Club::view)
			.sorted(Comparator.comparing(ClubView::name, String.CASE_INSENSITIVE_ORDER))
			.toList();
	}

	private Entry found(EntryId id) {
		return this.entries.findById(id.value()).orElseThrow(() -> NotFoundException.of("entry", id));
	}

	private EventId eventOf(EntryId id) {
		return this.entries.eventOf(id.value()).map(EventId::new).orElseThrow(() -> NotFoundException.of("entry", id));
	}

}
