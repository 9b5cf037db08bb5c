package rimebook.competition;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Cancels events and segments with a reason that everybody reads, brings them back, or
 * removes them while nothing hangs on them. What was skated in a cancelled segment stays
 * on record and does not count for the event's result.
 */
@Service
@Transactional
public class Cancellations {

	private static final String HELD = "takes place";

	private final Competitions competitions;

	private final EventRepository events;

	private final PastCancellationRepository past;

	private final ObjectProvider<CancellationGuard> guards;

	private final MoveRules rules;

	private final EntityManager entityManager;

	private final Acts acts;

	Cancellations(Competitions competitions, EventRepository events, PastCancellationRepository past,
			ObjectProvider<CancellationGuard> guards, MoveRules rules, EntityManager entityManager, Acts acts) {
		this.acts = acts;
		this.competitions = competitions;
		this.events = events;
		this.past = past;
		this.guards = guards;
		this.rules = rules;
		this.entityManager = entityManager;
	}

	/**
	 * Cancel a whole event.
	 * @param reason up to 300 characters; the public reads it
	 * @throws ConflictException if the competition is final, {@code already-cancelled},
	 * or {@code cancellation-refused} with the reason another module gives
	 */
	public EventView cancel(EventId id, String reason, Actor actor) {
		String why = Required.text("reason", reason, 300);
		Event event = held(id);
		EventView before = event.view();
		requireTakesPlace(before.name(), before.isCancelled());
		ask((guard) -> guard.againstCancelling(before, before.segments()));
		event.cancel(why, now());
		return changed(event, null, why,
				line(actor, "event", id, "event.cancelled").from(HELD, "cancelled").because(why));
	}

	/**
	 * Cancel one segment; the event's result is made of the others.
	 * @param reason up to 300 characters; the public reads it
	 * @throws ConflictException as for an event
	 * @throws RuleViolationException {@code last-segment} if no other segment is left
	 */
	public EventView cancel(SegmentId id, String reason, Actor actor) {
		String why = Required.text("reason", reason, 300);
		Event event = held(eventOf(id));
		EventView before = event.view();
		SegmentView segment = before.segment(id);
		requireTakesPlace(segment.name(), before.isCancelled(id));
		if (before.held().segments().size() == 1) {
			throw new RuleViolationException("last-segment", "reason",
					Sentence.of("competition.only-segment-to-cancel", segment.name(), before.name()));
		}
		ask((guard) -> guard.againstCancelling(before, List.of(segment)));
		event.segment(id).cancel(why, now());
		return changed(event, id, why,
				line(actor, "segment", id, "segment.cancelled").from(HELD, "cancelled").because(why));
	}

	/**
	 * Let a cancelled event take place again.
	 * @throws ConflictException if the competition is final, {@code not-cancelled}, or
	 * {@code cancellation-refused} with what contradicts it
	 */
	public EventView bringBack(EventId id, Actor actor) {
		Event event = held(id);
		EventView before = event.view();
		requireCancelled(before.name(), before.isCancelled());
		ask((guard) -> guard.againstBringingBack(before, before.segments()));
		event.bringBack();
		keep(id.value(), before.cancellation());
		return changed(event, null, "",
				line(actor, "event", id, "event.brought-back").from("cancelled: " + before.cancelled(), HELD));
	}

	/**
	 * Let a cancelled segment take place again; its places count again.
	 * @throws ConflictException as for an event
	 */
	public EventView bringBack(SegmentId id, Actor actor) {
		Event event = held(eventOf(id));
		EventView before = event.view();
		SegmentView segment = before.segment(id);
		requireCancelled(segment.name(), segment.isCancelled());
		ask((guard) -> guard.againstBringingBack(before, List.of(segment)));
		event.segment(id).bringBack();
		keep(id.value(), segment.cancellation());
		return changed(event, id, "",
				line(actor, "segment", id, "segment.brought-back").from("cancelled: " + segment.cancelled(), HELD));
	}

	/** What was published in between was published without it, and stays so. */
	private void keep(UUID subject, EventView.@Nullable Cancellation ended) {
		this.past.save(new PastCancellation(this.acts.nextId(), subject, Objects.requireNonNull(ended).since(), now()));
	}

	/**
	 * Tell whether an event was to take place at a moment, UTC, or did, whatever was said
	 * later.
	 */
	@Transactional(readOnly = true)
	public boolean tookPlace(EventView event, Instant moment) {
		return tookPlace(event.id().value(), event.cancellation(), moment);
	}

	/** The same of a segment, whether its event was cancelled or not. */
	@Transactional(readOnly = true)
	public boolean tookPlace(SegmentView segment, Instant moment) {
		return tookPlace(segment.id().value(), segment.cancellation(), moment);
	}

	private boolean tookPlace(UUID subject, EventView.@Nullable Cancellation now, Instant moment) {
		return (now == null || now.since().isAfter(moment)) && !this.past.wasCancelled(subject, moment);
	}

	/**
	 * Remove an event on which nothing hangs; only the record tells of it.
	 * @throws ConflictException if the competition is final, or {@code removal-refused}
	 * with what hangs on it
	 */
	public void remove(EventId id, Actor actor) {
		Event event = held(id);
		EventView before = event.view();
		this.rules.checkRemoval(before, before.segments());
		this.events.delete(event);
		this.events.flush();
		this.acts.publish(line(actor, "event", id, "event.removed").from(before.inWords(), ""));
	}

	/**
	 * Remove a segment on which nothing hangs.
	 * @throws ConflictException as for an event
	 * @throws RuleViolationException {@code last-segment} if it is the event's only one
	 */
	public EventView remove(SegmentId id, Actor actor) {
		EventView before = held(eventOf(id)).view();
		SegmentView segment = before.segment(id);
		if (before.segments().size() == 1) {
			throw new RuleViolationException("last-segment",
					Sentence.of("competition.only-segment-to-remove", segment.name(), before.name()));
		}
		this.rules.checkRemoval(before, List.of(segment));
		return this.competitions.changeEvent(before.id(), before.version(), before.draftWithout(id), actor);
	}

	private void ask(Function<CancellationGuard, Optional<Sentence>> question) {
		this.guards.orderedStream().flatMap((guard) -> question.apply(guard).stream()).findFirst().ifPresent((why) -> {
			throw new ConflictException("cancellation-refused", why);
		});
	}

	private static void requireTakesPlace(String name, boolean cancelled) {
		if (cancelled) {
			throw new ConflictException("already-cancelled", Sentence.of("competition.already-cancelled", name));
		}
	}

	private static void requireCancelled(String name, boolean cancelled) {
		if (!cancelled) {
			throw new ConflictException("not-cancelled", Sentence.of("competition.not-cancelled", name));
		}
	}

	/** Competition first, then the rest: see the house's order of locks. */
	private Event held(EventId id) {
		this.competitions.holdingOpen(id);
		return this.events.findById(id.value()).orElseThrow(() -> NotFoundException.of("event", id));
	}

	private EventId eventOf(SegmentId id) {
		return this.events.eventOf(id.value()).map(EventId::new).orElseThrow(() -> NotFoundException.of("segment", id));
	}

	private Instant now() {
		return this.acts.now();
	}

	/** The event counts as changed where only one of its segments is. */
	private EventView changed(Event event, @Nullable SegmentId segment, String reason, AuditedChange change) {
		if (segment != null) {
			this.entityManager.lock(event, LockModeType.PESSIMISTIC_FORCE_INCREMENT);
		}
		this.events.flush();
		EventView now = event.view();
		this.acts.publish(new Changed(now, (segment != null) ? now.segment(segment) : null, reason, change));
		return now;
	}

	private static AuditedChange line(Actor actor, String subject, Object id, String action) {
		return AuditedChange.of(actor, subject, id, action);
	}

	/**
	 * An event, or one segment of it, was cancelled or brought back; published in the
	 * transaction of the act.
	 *
	 * @param event as it is now
	 * @param segment the segment it is about, or {@code null} where it is the whole event
	 * @param reason why it was cancelled, empty when it was brought back
	 */
	public record Changed(EventView event, @Nullable SegmentView segment, String reason,
			AuditedChange change) implements AuditedEvent {
	}

}
