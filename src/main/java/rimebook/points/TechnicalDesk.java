package rimebook.points;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What the technical desk does while a team skates: each act rests on the version that
 * was seen and makes the next one, so two people at the desk never undo each other's
 * calls unseen, and an act that is sent twice is done once.
 */
@Service
public class TechnicalDesk {

	private final ElementCalls calls;

	private final PerformanceRegister performances;

	private final PointsBook book;

	TechnicalDesk(ElementCalls calls, PerformanceRegister performances, PointsBook book) {
		this.calls = calls;
		this.performances = performances;
		this.book = book;
	}

	/**
	 * Do one thing to the list of called elements. What was done already is not done
	 * again, whatever came after it: whoever had no answer sends the same once more.
	 * @return the list as it counts now
	 * @throws RuleViolationException naming what is refused: a code that the table of
	 * values does not have, no element chosen, nowhere to move
	 * @throws rimebook.shared.ConflictException {@code list-sequence-taken} if somebody
	 * else changed the list since it was seen; {@link #since} tells how
	 */
	@Transactional
	public CalledListView edit(Edit edit, Actor actor) {
		PerformanceView performance = this.performances.hold(edit.performance());
		List<CalledElement> seen = version(edit.performance(), edit.seen());
		List<CalledElement> before = version(edit.performance(), Math.max(0, edit.seen() - 1));
		List<ElementCalls.CallElements.Call> next = new EditedList(seen, before,
				this.book.rules(performance.segment()).values())
			.apply(edit);
		if (isDone(edit, next)) {
			return newest(edit);
		}
		PerformanceRegister.requireOnIce(performance);
		if (next.equals(seen.stream().map(EditedList::call).toList())) {
			return newest(edit);
		}
		return this.calls.call(new ElementCalls.CallElements(edit.performance(), edit.seen() + 1, next), actor);
	}

	/** Tell whether the version after the one that was seen is what the act makes. */
	private boolean isDone(Edit edit, List<ElementCalls.CallElements.Call> next) {
		return this.book.lists(edit.performance())
			.version(edit.seen() + 1)
			.filter((done) -> withoutIdentity(next)
				.equals(withoutIdentity(done.elements().stream().map(EditedList::call).toList())))
			.isPresent();
	}

	/** An element that is called for the first time gets its identity only then. */
	private static List<ElementCalls.CallElements.Call> withoutIdentity(List<ElementCalls.CallElements.Call> calls) {
		return calls.stream()
			.map((call) -> new ElementCalls.CallElements.Call(null, call.code(), call.worth(), call.base(),
					call.review()))
			.toList();
	}

	/**
	 * What changes nothing makes no version, and takes no word of the controller away.
	 */
	private CalledListView newest(Edit edit) {
		return this.book.list(edit.performance())
			.map(CalledList::view)
			.orElseThrow(() -> new RuleViolationException("nothing-to-undo", Sentence.of("points.nothing-to-undo")));
	}

	private List<CalledElement> version(PerformanceId performance, int sequence) {
		return this.book.lists(performance).version(sequence).map(CalledList::elements).orElseGet(() -> List.of());
	}

	/** Tell what others made of the list since a version of it was seen. */
	@Transactional(readOnly = true)
	public List<Change> since(PerformanceId performance, int seen) {
		List<Change> changes = new ArrayList<>();
		List<CalledElement> before = version(performance, seen);
		for (CalledList list : this.book.lists(performance).versions()) {
			if (list.sequence() > seen) {
				CalledListView view = list.view();
				changes.add(new Change(view.sequence(), view.calledBy(), view.receivedAt(),
						new ListDifference(before, view.elements()).words()));
				before = view.elements();
			}
		}
		return changes;
	}

	/**
	 * What a called code can become, for the keys of the desk.
	 * @throws NotFoundException if the segment is not judged by points
	 */
	@Transactional(readOnly = true)
	public List<CodeOptions> options(SegmentId segment, List<CalledElement> elements) {
		CodeChange codes = new CodeChange(this.book.rules(segment).values());
		return elements.stream().map((element) -> CodeOptions.of(element.code(), codes)).toList();
	}

	/** How far a plan has been called. */
	public List<PlannedLine> progress(List<String> planned, List<CalledElement> called) {
		return PlanProgress.of(planned, called.stream().map(CalledElement::code).toList());
	}

	/** What the technical desk does to the list of called elements. */
	public enum Act {

		/** Call an element after the last one. */
		CALL,

		/** Put an element in before another. */
		INSERT,

		/** Call an element by another code. */
		CODE,

		/** Give an element another level. */
		LEVEL,

		/**
		 * Give the additional part of an element another level, or take the part away.
		 */
		PART,

		/** Go on to the next downgrade that the table of values has, at last to none. */
		DOWNGRADE,

		/** Look at an element again, or settle that. */
		REVIEW,

		/** Say that an element missed its basic requirement, or take that back. */
		NO_VALUE,

		/** Say that an element is one too many, or take that back. */
		TOO_MANY,

		/** Move an element before the one before it. */
		EARLIER,

		/** Move an element behind the one after it. */
		LATER,

		/** Take an element out. */
		REMOVE,

		/** Put the list back as it was before its last change. */
		UNDO

	}

	/**
	 * One act of the technical desk.
	 *
	 * @param seen the version of the list that was seen, 0 before the first
	 * @param element the element it is about; {@code null} to call a new one and to undo
	 * @param value the code, or the sign of the level ("B", "1" to "4", empty for no
	 * part); empty where none is needed
	 */
	public record Edit(PerformanceId performance, int seen, TechnicalDesk.Act act, @Nullable UUID element,
			String value) {
	}

	/**
	 * What one version of the called elements changed.
	 *
	 * @param sequence the version
	 * @param by who sent it
	 * @param at when, UTC
	 * @param words one part of a sentence for each difference from the version before
	 */
	public record Change(int sequence, String by, Instant at, List<String> words) {

		public Change {
			words = List.copyOf(words);
		}

	}

	/**
	 * What a called code can become within the table of values.
	 *
	 * @param levels the signs of the levels it can be given, such as "B1234"
	 * @param parts the signs of the levels that its additional part can be given
	 * @param withoutPart whether its part can be taken away
	 * @param downgrade whether there is another downgrade of it
	 */
	public record CodeOptions(String levels, String parts, boolean withoutPart, boolean downgrade) {

		static CodeOptions of(String code, CodeChange codes) {
			return new CodeOptions(codes.levels(code), codes.parts(code), codes.canLosePart(code),
					codes.canDowngrade(code));
		}

	}

	/**
	 * A planned element and how far it is.
	 *
	 * @param number its place in the plan, from 1
	 */
	public record PlannedLine(int number, String code, State state) {

		/** How far a planned element is. */
		public enum State {

			/** An element of that kind was called. */
			CALLED,

			/** A later one was called, this one was not. */
			PASSED,

			/** The first one after all that were called. */
			NEXT,

			/** Still to come. */
			TO_COME

		}

	}

	/**
	 * Follows a plan while elements are called. A planned element counts as called when
	 * one of its kind was, at whatever level; what is next comes after the last of those.
	 */
	static final class PlanProgress {

		private PlanProgress() {
		}

		static List<PlannedLine> of(List<String> planned, List<String> called) {
			List<String> kinds = new ArrayList<>(called.stream().map(CodeChange::element).toList());
			List<Boolean> found = planned.stream().map((code) -> kinds.remove(CodeChange.element(code))).toList();
			int last = found.lastIndexOf(true);
			List<PlannedLine> lines = new ArrayList<>();
			for (int i = 0; i < planned.size(); i++) {
				lines.add(new PlannedLine(i + 1, planned.get(i), state(found.get(i), i, last)));
			}
			return lines;
		}

		private static PlannedLine.State state(boolean called, int index, int last) {
			if (called) {
				return PlannedLine.State.CALLED;
			}
			if (index < last) {
				return PlannedLine.State.PASSED;
			}
			return (index == last + 1) ? PlannedLine.State.NEXT : PlannedLine.State.TO_COME;
		}

	}

}
