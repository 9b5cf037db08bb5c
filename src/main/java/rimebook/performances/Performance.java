package rimebook.performances;

import java.time.Instant;
import java.util.Comparator;
import java.util.Objects;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderView;
import rimebook.entries.EntryId;
import rimebook.shared.ConflictException;

/** One team in one segment; guards every move of its status. */
@Entity
class Performance {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	@Column(name = "segment_id")
	private UUID segment;

	@Column(name = "entry_id")
	private UUID entry;

	private int startNumber;

	private int groupNumber;

	@Enumerated(EnumType.STRING)
	private PerformanceStatus status = PerformanceStatus.WAITING;

	private String statusReason = "";

	/** 1, and one more for each time that the whole programme is skated again. */
	private int skate = 1;

	/** The performance in whose place this one is skated, if any. */
	private @Nullable UUID againFor;

	/** Whether it skates only when the referee calls it, after others. */
	private boolean postponed;

	/** Why it was called out of the drawn order, empty where it was not. */
	private String callReason = "";

	private @Nullable Instant calledAt;

	private @Nullable Instant closedAt;

	@Column(name = "ended_with")
	private @Nullable UUID endedWith;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Performance() {
	}

	Performance(UUID id, SegmentId segment, StartingOrderView.Start start) {
		this.id = id;
		this.segment = segment.value();
		this.entry = start.entry().value();
		this.startNumber = start.number();
		this.groupNumber = start.group();
	}

	/** Take the number and the group of another order. */
	void renumber(int startNumber, int group) {
		this.startNumber = startNumber;
		this.groupNumber = group;
	}

	/** Tell whether that is its number and its group. */
	boolean hasPlace(StartingOrderView.Start start) {
		return this.startNumber == start.number() && this.groupNumber == start.group();
	}

	/** Its number and its group, on the record. */
	String placeInWords() {
		return "number " + this.startNumber + ", group " + this.groupNumber;
	}

	/** The whole programme once more, from its beginning; the team stays on the ice. */
	static Performance again(UUID id, Performance first, int skate, Instant now) {
		Performance again = new Performance();
		again.id = id;
		again.segment = first.segment;
		again.entry = first.entry;
		again.startNumber = first.startNumber;
		again.groupNumber = first.groupNumber;
		again.skate = skate;
		again.againFor = first.id;
		again.callReason = first.callReason;
		again.status = PerformanceStatus.ON_ICE;
		again.calledAt = now;
		return again;
	}

	/**
	 * Call the team on the ice.
	 * @param reason why out of the drawn order, empty where it is in order
	 */
	void call(Instant now, String reason) {
		move(PerformanceStatus.ON_ICE, "");
		this.calledAt = now;
		this.postponed = false;
		this.callReason = reason.isEmpty() ? this.callReason : reason;
	}

	/** Let others skate first; what was noted so far stays. */
	void postpone(String reason) {
		move(PerformanceStatus.WAITING, reason);
		this.postponed = true;
	}

	/** Nothing of it counts any more. */
	void setAside(String reason) {
		move(PerformanceStatus.SET_ASIDE, reason);
	}

	/** It counts after all: the re-skate was a slip. */
	void countAgain() {
		move(PerformanceStatus.ON_ICE, "");
	}

	void takeBack() {
		move(PerformanceStatus.WAITING, "");
		this.calledAt = null;
		this.callReason = "";
	}

	void close(Instant now) {
		move(PerformanceStatus.CLOSED, "");
		this.closedAt = now;
	}

	/** Let the cards be changed once more; what was closed stays closed at its time. */
	void reopen(String reason) {
		move(PerformanceStatus.REOPENED, reason);
	}

	void end(PerformanceStatus how, String reason) {
		move(how, reason);
	}

	/**
	 * End it because of something else: the entry that has withdrawn, or an earlier
	 * performance of the team. If that is taken back, so is this.
	 */
	void endWith(UUID cause, PerformanceStatus how, String reason) {
		move(how, reason);
		this.endedWith = cause;
	}

	/** End it because the team has no result in an earlier segment. */
	void endAfter(Performance earlier) {
		endWith(earlier.id,
				(earlier.status == PerformanceStatus.DISQUALIFIED) ? earlier.status : PerformanceStatus.WITHDRAWN,
				earlier.statusReason);
	}

	boolean endedWith(UUID cause) {
		return cause.equals(this.endedWith);
	}

	/** Tell whether it was ended because of an earlier performance of the team. */
	boolean isFollowing() {
		return this.endedWith != null && !this.endedWith.equals(this.entry);
	}

	/** Set how it came through, by the word of two officials. */
	void correct(PerformanceStatus next, String reason) {
		if (!this.status.canBeCorrectedTo(next)) {
			throw PerformanceRefusals.cannotBecome(this, next);
		}
		this.status = next;
		this.statusReason = next.isEndedWithoutMarks() ? reason : "";
		this.endedWith = null;
		if (next == PerformanceStatus.WAITING) {
			this.calledAt = null;
		}
	}

	/** Tell whether it was on the ice, whatever became of it then. */
	boolean wasCalled() {
		return this.calledAt != null;
	}

	private void move(PerformanceStatus next, String reason) {
		if (!this.status.canBecome(next)) {
			throw PerformanceRefusals.cannotBecome(this, next);
		}
		this.status = next;
		this.statusReason = reason;
	}

	/** Refuse an act that was decided on an older look at this performance. */
	void requireVersion(int seen) {
		ConflictException.requireSeen("performance", seen, this.version);
	}

	boolean isOnIce() {
		return this.status == PerformanceStatus.ON_ICE;
	}

	/** Tell whether it is skated in place of one that does not count. */
	boolean isAgain() {
		return this.againFor != null;
	}

	/** The one that does not count, {@code null} where this is the first skate. */
	@Nullable PerformanceId againFor() {
		return (this.againFor != null) ? new PerformanceId(this.againFor) : null;
	}

	int skate() {
		return this.skate;
	}

	boolean isReopened() {
		return this.status == PerformanceStatus.REOPENED;
	}

	/** Tell whether judges may send and change their cards. */
	boolean takesCards() {
		return this.status.takesCards();
	}

	boolean isClosed() {
		return this.status == PerformanceStatus.CLOSED;
	}

	/** Tell whether cards were closed, even if the team was disqualified afterwards. */
	boolean hasClosedCards() {
		return this.closedAt != null;
	}

	/** Tell whether its cards were closed later than the other's. */
	boolean wasClosedAfter(Performance other) {
		return this.closedAt != null && other.closedAt != null
				&& Comparator.comparing((Performance one) -> Objects.requireNonNull(one.closedAt))
					.thenComparing(Performance::startNumber)
					.compare(this, other) > 0;
	}

	/** Tell whether its cards were closed later than that. */
	boolean wasClosedAfter(Instant moment) {
		return this.closedAt != null && this.closedAt.isAfter(moment);
	}

	String statusReason() {
		return this.statusReason;
	}

	PerformanceId id() {
		return new PerformanceId(this.id);
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	EntryId entry() {
		return new EntryId(this.entry);
	}

	int startNumber() {
		return this.startNumber;
	}

	PerformanceStatus status() {
		return this.status;
	}

	PerformanceView view() {
		return new PerformanceView(id(), segment(),
				new PerformanceView.Start(entry(), this.startNumber, this.groupNumber),
				new PerformanceView.Course(this.status, this.statusReason, this.skate, this.closedAt),
				new PerformanceView.Turn(this.calledAt, this.callReason, this.postponed),
				(this.version != null) ? this.version : 0);
	}

}
