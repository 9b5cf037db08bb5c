package rimebook.competition;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import jakarta.persistence.EntityGraph;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Competitions, their events and segments. Whatever changes one of them first takes hold
 * of the competition's row, so that changes of one competition come one after the other.
 */
@Service
@Transactional(readOnly = true)
public class Competitions {

	private final CompetitionRepository competitions;

	private final EventRepository events;

	private final MoveRules rules;

	private final JudgingMethods methods;

	private final EntityManager entityManager;

	private final Acts acts;

	Competitions(CompetitionRepository competitions, EventRepository events, MoveRules rules, JudgingMethods methods,
			EntityManager entityManager, Acts acts) {
		this.acts = acts;
		this.competitions = competitions;
		this.events = events;
		this.rules = rules;
		this.methods = methods;
		this.entityManager = entityManager;
	}

	/**
	 * Write down a new competition, in the state planned.
	 * @throws ConflictException {@code competition-meanwhile} if somebody writes down one
	 * of the same name at the same moment
	 */
	@Transactional
	public CompetitionView create(DraftCompetition facts, Actor actor) {
		String slug = Slug.unique(facts.name(), "competition", this.competitions::existsBySlug);
		Competition competition = new Competition(this.acts.nextId(), slug, facts);
		try {
			this.competitions.saveAndFlush(competition);
		}
		catch (DataIntegrityViolationException ex) {
			throw new ConflictException("competition-meanwhile", "name", Sentence.of("competition.meanwhile"));
		}
		this.acts.publish(AuditedChange.of(actor, "competition", competition.id(), "competition.created")
			.to(competition.inWords()));
		return competition.view();
	}

	/**
	 * Change the facts of a competition that is not final.
	 * @throws ConflictException if the version is stale or the competition is final
	 */
	@Transactional
	public CompetitionView change(CompetitionId id, int version, DraftCompetition facts, Actor actor) {
		Competition competition = hold(id);
		String before = competition.inWords();
		competition.change(version, facts);
		this.competitions.flush();
		this.acts.publish(
				AuditedChange.of(actor, "competition", id, "competition.changed").from(before, competition.inWords()));
		return competition.view();
	}

	/**
	 * Move a competition to another state.
	 * @throws ConflictException if the version is stale, {@code competition-move} if the
	 * state cannot follow or another module refuses it, with the reason
	 */
	@Transactional
	public CompetitionView move(CompetitionId id, int version, CompetitionState next, Actor actor) {
		Competition competition = hold(id);
		CompetitionView before = competition.view();
		competition.checkMove(version, next);
		this.rules.holdStill(before, next);
		this.rules.checkMove(before, next);
		competition.moveTo(next);
		this.competitions.flush();
		this.acts.publish(AuditedChange.of(actor, "competition", id, "competition.moved")
			.from(before.state().inWords(), next.inWords()));
		return competition.view();
	}

	/**
	 * Take a competition back one step from its end: from archived to final, from final
	 * to running. An administrator's act.
	 * @param reason why, up to 500 characters; it stands on the record
	 * @throws ConflictException if the version is stale, or {@code competition-not-final}
	 */
	@Transactional
	public CompetitionView takeBack(CompetitionId id, int version, String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		Competition competition = hold(id);
		CompetitionState before = competition.state();
		competition.takeBack(version);
		this.competitions.flush();
		this.acts.publish(AuditedChange.of(actor, "competition", id, "competition.taken-back")
			.from(before.inWords(), competition.state().inWords())
			.because(why));
		return competition.view();
	}

	/** The states that may follow now, each with the reason where it is refused. */
	public List<Move> moves(CompetitionId id) {
		return this.rules.moves(competition(id));
	}

	/** All competitions, the latest first. */
	public List<CompetitionView> all() {
		return this.competitions.findAllByOrderByFirstDayDescNameAsc().stream().map(Competition::view).toList();
	}

	/**
	 * The competition of that identity.
	 * @throws NotFoundException if there is none
	 */
	public CompetitionView competition(CompetitionId id) {
		return this.competitions.findById(id.value()).orElseThrow(() -> NotFoundException.of("competition", id)).view();
	}

	/**
	 * The competition of that public address.
	 * @throws NotFoundException if there is none
	 */
	public CompetitionView bySlug(String slug) {
		return this.competitions.findBySlug(slug).orElseThrow(() -> NotFoundException.of("competition", slug)).view();
	}

	/**
	 * Add an event at the end of a competition that is not final.
	 * @throws ConflictException if the competition is final
	 * @throws RuleViolationException {@code event-name-taken}, or
	 * {@code rule-set-does-not-fit} if the rule set is not known here or has no factors
	 * for a segment
	 */
	@Transactional
	public EventView addEvent(CompetitionId id, DraftEvent facts, Actor actor) {
		hold(id).checkOpenToChange();
		this.methods.check(facts);
		List<Event> others = this.events.findByCompetitionIdOrderByPosition(id.value());
		checkName(facts.name(), others);
		String slug = Slug.unique(facts.name(), "event",
				(taken) -> others.stream().anyMatch((event) -> event.hasSlug(taken)));
		int position = 1 + others.stream().mapToInt((other) -> other.view().listing().position()).max().orElse(0);
		Event event = new Event(this.acts.nextId(), id, position, slug);
		event.write(facts, this.acts::nextId);
		this.events.saveAndFlush(event);
		this.acts.publish(AuditedChange.of(actor, "event", event.id(), "event.added").to(event.inWords()));
		return event.view();
	}

	/**
	 * Change an event. A segment keeps its identity while its name stays, or when it
	 * takes the place of one that fell away.
	 * @throws ConflictException if the version is stale, the competition is final, or
	 * {@code event-change} if another module refuses it, with the reason, or
	 * {@code removal-refused} with what hangs on a segment that would fall away
	 * @throws RuleViolationException {@code event-name-taken}, or
	 * {@code rule-set-does-not-fit} if the rule set is not known here or has no factors
	 * for a segment
	 */
	@Transactional
	public EventView changeEvent(EventId id, int version, DraftEvent facts, Actor actor) {
		Event event = holdEvent(id);
		event.requireVersion(version);
		this.rules.checkChange(id);
		List<SegmentView> gone = event.fallingAway(facts.segments());
		if (!gone.isEmpty()) {
			this.rules.checkRemoval(event.view(), gone);
		}
		this.methods.check(facts);
		checkName(facts.name(), others(event));
		String before = event.inWords();
		this.entityManager.lock(event, LockModeType.PESSIMISTIC_FORCE_INCREMENT);
		event.write(facts, this.acts::nextId);
		this.events.flush();
		this.acts.publish(AuditedChange.of(actor, "event", id, "event.changed").from(before, event.inWords()));
		return event.view();
	}

	/**
	 * Add an event like that one under another name; errors as for {@link #addEvent}.
	 * Others who know something of the event hear of it and copy that.
	 */
	@Transactional
	public EventView copyEvent(EventId id, String name, Actor actor) {
		EventView original = event(id);
		EventView copy = addEvent(original.competition(), original.draft().named(name), actor);
		this.acts.publish(new EventCopied(id, copy.id(), actor));
		return copy;
	}

	/**
	 * The event of that identity.
	 * @throws NotFoundException if there is none
	 */
	public EventView event(EventId id) {
		return found(id).view();
	}

	/** The events of a competition, in order. */
	public List<EventView> events(CompetitionId id) {
		return this.events.findByCompetitionIdOrderByPosition(id.value()).stream().map(Event::view).toList();
	}

	/**
	 * The events of these competitions with one question, each competition's in order.
	 */
	public Map<CompetitionId, List<EventView>> events(Collection<CompetitionId> ids) {
		return this.events.findByCompetitionIdInOrderByPosition(ids.stream().map(CompetitionId::value).toList())
			.stream()
			.map(Event::view)
			.collect(Collectors.groupingBy(EventView::competition));
	}

	/**
	 * The event of that public address within a competition.
	 * @throws NotFoundException if there is none
	 */
	public EventView eventBySlug(CompetitionId id, String slug) {
		return this.events.findByCompetitionIdAndSlug(id.value(), slug)
			.orElseThrow(() -> NotFoundException.of("event", slug))
			.view();
	}

	/**
	 * The segment of that identity.
	 * @throws NotFoundException if there is none
	 */
	public SegmentView segment(SegmentId id) {
		return eventOf(id).segment(id);
	}

	/**
	 * The event to which a segment belongs.
	 * @throws NotFoundException if there is no such segment
	 */
	public EventView eventOf(SegmentId id) {
		// By its key, so that a transaction that asks for it again is answered from
		// memory.
		EntityGraph<Segment> withEvent = this.entityManager.createEntityGraph(Segment.class);
		withEvent.addAttributeNodes("event");
		Segment segment = this.entityManager.find(withEvent, id.value());
		if (segment == null) {
			throw NotFoundException.of("segment", id);
		}
		return segment.event().view();
	}

	/**
	 * Take hold of a competition until the transaction ends: its state and events stay as
	 * they are, and whoever else wants to hold it waits. Take it before anything else.
	 * @throws NotFoundException if there is none
	 */
	@Transactional
	public CompetitionView holding(CompetitionId id) {
		return hold(id).view();
	}

	/** As {@link #holding(CompetitionId)} for the competition of an event. */
	@Transactional
	public CompetitionView holding(EventId id) {
		return hold(competitionOf(id)).view();
	}

	/**
	 * As {@link #holding(EventId)}, and refuse unless the competition may still change.
	 * @throws ConflictException {@code competition-final} or {@code competition-archived}
	 */
	@Transactional
	CompetitionView holdingOpen(EventId id) {
		Competition competition = hold(competitionOf(id));
		competition.checkOpenToChange();
		return competition.view();
	}

	private Competition hold(CompetitionId id) {
		return this.competitions.holdById(id.value()).orElseThrow(() -> NotFoundException.of("competition", id));
	}

	private Event holdEvent(EventId id) {
		hold(competitionOf(id)).checkOpenToChange();
		return found(id);
	}

	private CompetitionId competitionOf(EventId id) {
		return this.events.competitionOf(id.value())
			.map(CompetitionId::new)
			.orElseThrow(() -> NotFoundException.of("event", id));
	}

	private Event found(EventId id) {
		return this.events.findById(id.value()).orElseThrow(() -> NotFoundException.of("event", id));
	}

	private List<Event> others(Event event) {
		return this.events.findByCompetitionIdOrderByPosition(event.view().competition().value())
			.stream()
			.filter((other) -> !other.id().equals(event.id()))
			.toList();
	}

	private static void checkName(String name, List<Event> others) {
		if (others.stream().anyMatch((event) -> event.isNamed(name))) {
			throw new RuleViolationException("event-name-taken", "name",
					Sentence.of("competition.event-name-taken", name));
		}
	}

	/**
	 * Has a say before the method, judges, rule set or segments of an event are changed.
	 * Every bean of this type is asked, inside the transaction of the change.
	 */
	@FunctionalInterface
	public interface EventChangeGuard {

		/**
		 * Say why the event must not be changed, or nothing if it may.
		 * @return a whole sentence
		 */
		Optional<Sentence> refusal(EventId event);

	}

	/**
	 * A move that a competition could make now.
	 *
	 * @param next the state it would be in
	 * @param refusal why it may not, {@code null} if it may
	 */
	public record Move(CompetitionState next, @Nullable Sentence refusal) {

		/** Tell whether the move would be accepted. */
		public boolean isAllowed() {
			return this.refusal == null;
		}

	}

}
