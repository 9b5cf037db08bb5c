package rimebook.performances;

import java.util.Map;
import java.util.Optional;

import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Where amendments are checked and put in. Who may ask for one and who approves it is
 * decided by protests; the version that was there before stays for ever.
 *
 * @param <A> the amendments that it knows
 */
public interface Amending<A extends Amendment> {

	/** The kinds it knows, by the names under which they are kept. */
	Map<String, Class<? extends A>> kinds();

	/**
	 * Take hold of what has to be held before any other row, until the transaction ends.
	 */
	default void hold(PerformanceId performance) {
	}

	/**
	 * Check that something else could stand in a place.
	 * @return what stands there now
	 * @throws ConflictException {@code card-not-closed} if it can still be changed freely
	 * @throws RuleViolationException {@code line-unknown}, {@code nothing-to-correct} if
	 * it stands there already, or naming the field that cannot be so
	 */
	A check(Amendment.SupposedChange<A> change);

	/** Why what could be proposed cannot be put in any more; empty if it can. */
	default Optional<Sentence> refusal(Amendment.SupposedChange<A> change, A expected) {
		return Optional.empty();
	}

	/**
	 * Put it in.
	 * @param expected what the correction was decided on
	 * @throws ConflictException if the cards are not closed, or something else stands
	 * there now
	 * @throws RuleViolationException as for {@link #check}
	 */
	void apply(Amendment.SupposedChange<A> change, A expected, Approval approval);

	/**
	 * That two officials want it so.
	 *
	 * @param reason why
	 * @param names who proposed and who approved it
	 * @param actor who approved it
	 */
	record Approval(String reason, Sentence names, Actor actor) {

		/** The reason with both names, as it stands on the new version of the result. */
		public Sentence reasonWithNames() {
			return Sentence.of("note.named", this.reason, this.names);
		}

	}

}
