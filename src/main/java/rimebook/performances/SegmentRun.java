package rimebook.performances;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.Required;

/**
 * What the referee does with a segment: opens it, calls teams, closes cards, ends
 * performances that cannot be marked.
 */
@Service
public class SegmentRun {

	private final PerformanceRegister performances;

	private final HeldSegment.Source segments;

	private final SegmentOpening opening;

	private final PerformanceProgress progress;

	private final EndedEntries entries;

	private final Acts acts;

	SegmentRun(PerformanceRegister performances, HeldSegment.Source segments, SegmentOpening opening,
			PerformanceProgress progress, EndedEntries entries, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.segments = segments;
		this.opening = opening;
		this.progress = progress;
		this.entries = entries;
	}

	/**
	 * Open a segment: from here on its order and panel are fixed and teams can be called.
	 * @throws rimebook.shared.RuleViolationException if the competition is not running,
	 * no order is drawn, the panel is incomplete or an earlier segment is not finished
	 * @throws rimebook.shared.ConflictException if the segment is open already
	 */
	@Transactional
	public void open(SegmentId segment, Actor actor) {
		int opened = this.opening.open(segment);
		this.acts.publish(new PerformanceEvent.SegmentOpened(segment,
				AuditedChange.of(actor, "segment", segment, "segment.opened")
					.from("not open", opened + ((opened == 1) ? " performance" : " performances"))));
	}

	/**
	 * Call the team that comes next on the ice; as
	 * {@link #call(PerformanceId, int, String, Actor)} without a reason.
	 */
	@Transactional
	public void call(PerformanceId id, int version, Actor actor) {
		call(id, version, "", actor);
	}

	/**
	 * Call a team on the ice. One performance of a segment is on the ice at a time.
	 * @param version the version of the performance the referee was looking at
	 * @param reason why it is called although another comes next, up to 500 characters;
	 * empty for the one that comes next and for one that waited by the referee's word
	 * @throws rimebook.shared.RuleViolationException {@code call-reason-missing} if
	 * another team comes next; {@code order-incomplete} if it is the first and a team
	 * that takes part has no number
	 * @throws rimebook.shared.ConflictException if another one is still on the ice, or
	 * this one has been called, closed or ended
	 */
	@Transactional
	public void call(PerformanceId id, int version, String reason, Actor actor) {
		String why = Required.optional("callReason", reason, 500);
		this.entries.hold(id);
		HeldSegment held = this.segments.of(id, version);
		this.opening.requireWholeBeforeFirstCall(held.performance().segment());
		held.requireIceFree();
		held.requireInOrder(why);
		Performance performance = held.performance();
		performance.call(this.acts.now(), why);
		this.acts.publish(new PerformanceEvent.Called(id, performance.segment(), performance.entry(),
				line(actor, performance, why.isEmpty() ? "performance.called" : "performance.called-out-of-order")
					.from("waiting", "on the ice")
					.because(why)));
	}

	/**
	 * Take back a call that was a slip.
	 * @throws rimebook.shared.ConflictException once a card was sent or the clock started
	 */
	@Transactional
	public void takeBack(PerformanceId id, int version, Actor actor) {
		Performance performance = this.segments.one(id, version);
		this.progress.requireNotBegun(performance);
		performance.takeBack();
		this.acts.publish(new PerformanceEvent.CallTakenBack(id, performance.segment(),
				line(actor, performance, "performance.call-taken-back").from("on the ice", "waiting")));
	}

	/**
	 * Close the cards of the performance on the ice, or of one whose cards were opened
	 * again: its standing is published in the same transaction.
	 * @throws rimebook.shared.RuleViolationException if a seat's card is missing, or in
	 * points judging the called elements or a grade; it names what is missing
	 * @throws rimebook.shared.ConflictException if the clock was started and not stopped
	 * @throws rimebook.shared.ConflictException {@code another-reopened} while the cards
	 * of another team are open again
	 */
	@Transactional
	public void close(PerformanceId id, int version, Actor actor) {
		HeldSegment held = this.segments.of(id, version);
		held.requireNoneReopened();
		Performance performance = held.performance();
		PerformanceProgress.Whole cards = this.progress.requireWhole(performance);
		String before = PerformanceRefusals.words(performance.status());
		String words = performance.isReopened() ? reopenedWords(performance) : "";
		performance.close(this.acts.now());
		this.acts.publish(new PerformanceEvent.CardsClosed(id, performance.segment(), words, cards.panel(),
				line(actor, performance, "cards.closed").from(before, cards.words())));
	}

	private static String reopenedWords(Performance performance) {
		return "The cards of start number " + performance.startNumber() + " were opened and closed again: "
				+ performance.statusReason();
	}

	/**
	 * End a performance without marks that count. A team that is withdrawn has withdrawn
	 * from the event.
	 * @param how withdrawn, not finished or disqualified
	 * @param reason why, up to 500 characters
	 * @throws rimebook.shared.ConflictException {@code status-needs-two} once its cards
	 * were closed, {@code performance-state} if it has ended already
	 */
	@Transactional
	public void end(PerformanceId id, int version, PerformanceStatus how, String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		this.entries.hold(id);
		Performance performance = this.segments.one(id, version);
		requireMarksNotClosed(performance);
		String before = PerformanceRefusals.words(performance.status());
		performance.end(how, why);
		this.acts.publish(new PerformanceEvent.Ended(id, performance.segment(), how,
				line(actor, performance, "performance.ended").from(before, PerformanceRefusals.words(how))
					.because(why)));
		this.entries.follow(performance.entry(), how, why, actor);
	}

	private static void requireMarksNotClosed(Performance performance) {
		if (performance.isClosed() || performance.isReopened()) {
			throw PerformanceRefusals.needsTwo(performance);
		}
	}

	/** The team that comes next; empty where none waits. */
	@Transactional(readOnly = true)
	public Optional<PerformanceView> next(SegmentId segment) {
		return RunningOrder.next(performances(segment));
	}

	/**
	 * List the performances of an opened segment by starting number; empty before. What
	 * is set aside is not among them.
	 */
	@Transactional(readOnly = true)
	public List<PerformanceView> performances(SegmentId segment) {
		return this.performances.ofSegment(segment);
	}

	/** Return one performance. */
	@Transactional(readOnly = true)
	public PerformanceView performance(PerformanceId id) {
		return this.performances.find(id);
	}

	private static AuditedChange line(Actor actor, Performance performance, String action) {
		return AuditedChange.of(actor, "performance", performance.id(), action);
	}

}
