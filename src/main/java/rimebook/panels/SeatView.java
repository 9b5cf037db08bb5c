package rimebook.panels;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.wording.Sentence;

/**
 * A seat of an event's panel, somebody on it or not.
 *
 * @param place where on the panel it is
 * @param occupant who sits there, if anybody
 * @param access what a tablet joins with
 * @param tablet what was heard of the tablet that joined
 */
public record SeatView(SeatId id, EventId event, SeatPlace place, Occupant occupant, Access access, Tablet tablet) {

	/** The seat as people call it: "Judge 3". */
	public Sentence spoken() {
		return this.place.spoken();
	}

	/** The same in English, as on the record. */
	public String label() {
		return this.place.label();
	}

	/** Tell whether a tablet can join with a code, shown or not. */
	public boolean hasCode() {
		return this.access.codeIssuedAt() != null;
	}

	/** What whoever sits there does. */
	public SeatKind kind() {
		return this.place.kind();
	}

	/** Which one of its kind, from 1. */
	public int number() {
		return this.place.number();
	}

	/** Who sits there, {@code null} for nobody. */
	public @Nullable OfficialView official() {
		return this.occupant.official();
	}

	/** Give it back when vacating, so that nobody removes another's choice. */
	public int version() {
		return this.occupant.version();
	}

	/**
	 * What a tablet joins with, {@code null} until a code is issued and once it is shown
	 * no longer.
	 */
	public @Nullable String code() {
		return this.access.code();
	}

	/**
	 * Who sits there.
	 *
	 * @param overrideReason why the own-club rule was set aside, empty where it was not
	 * @param version give it back when vacating, so that nobody removes another's choice
	 */
	public record Occupant(@Nullable OfficialView official, String overrideReason, int version) {
	}

	/**
	 * What a tablet joins with.
	 *
	 * @param code what a tablet joins with, {@code null} until one is issued and once it
	 * is shown no longer
	 * @param codeIssuedAt when the code was issued, {@code null} until one is
	 */
	public record Access(@Nullable String code, @Nullable Instant codeIssuedAt) {
	}

	/**
	 * What was heard of the tablet that joined.
	 *
	 * @param pairedAt when the tablet joined, {@code null} while none has
	 * @param lastHeardAt when the tablet last spoke, {@code null} while it has not
	 * @param waiting how many cards the tablet says it has not been able to hand over
	 * @param faulty whether the tablet says that its page could not show everything
	 */
	public record Tablet(@Nullable Instant pairedAt, @Nullable Instant lastHeardAt, int waiting, boolean faulty) {
	}

}
