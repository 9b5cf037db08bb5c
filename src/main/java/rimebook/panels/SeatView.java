package rimebook.panels;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;

/**
 * A seat of an event's panel, somebody on it or not.
 *
 * @param number which one of its kind, from 1
 * @param overrideReason why the own-club rule was set aside, empty where it was not
 * @param label the seat as people call it: "Judge 3"
 * @param code what a tablet joins with, {@code null} until one is issued and once it is
 * shown no longer
 * @param pairedAt when the tablet joined, {@code null} while none has
 * @param lastHeardAt when the tablet last spoke, {@code null} while it has not
 * @param waiting how many cards the tablet says it has not been able to hand over
 * @param faulty whether the tablet says that its page could not show everything
 * @param version give it back when vacating, so that nobody removes another's choice
 * @param codeIssuedAt when the code was issued, {@code null} until one is
 */
public record SeatView(SeatId id, EventId event, SeatKind kind, int number, @Nullable OfficialView official,
		String overrideReason, String label, @Nullable String code, @Nullable Instant pairedAt,
		@Nullable Instant lastHeardAt, int waiting, boolean faulty, int version, @Nullable Instant codeIssuedAt) {

	/** Tell whether a tablet can join with a code, shown or not. */
	public boolean hasCode() {
		return this.codeIssuedAt != null;
	}

}
