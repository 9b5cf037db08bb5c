package rimebook.points;

import java.util.ArrayList;
import java.util.List;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;

/**
 * What the technical desk does while a team skates: each act rests on the version that
 * was seen and makes the next one, so two people at the desk never undo each other's
 * calls unseen, and an act that is sent twice is done once.
 */
@Service
public class TechnicalDesk {

	private final ElementCalls calls;

	private final DeductionNotes deductions;

	private final PerformanceRegister performances;

	private final PointsBook book;

	TechnicalDesk(ElementCalls calls, DeductionNotes deductions, PerformanceRegister performances, PointsBook book) {
		this.calls = calls;
		this.deductions = deductions;
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
	public CalledListView edit(EditList edit, Actor actor) {
		PerformanceView performance = this.performances.hold(edit.performance());
		List<CalledElement> seen = version(edit.performance(), edit.seen());
		List<CalledElement> before = version(edit.performance(), Math.max(0, edit.seen() - 1));
		List<CallElements.Call> next = new ListEdits(seen, before, this.book.rules(performance.segment()).values())
			.apply(edit);
		if (isDone(edit, next)) {
			return newest(edit);
		}
		PerformanceRegister.requireOnIce(performance);
		if (next.equals(seen.stream().map(ListEdits::call).toList())) {
			return newest(edit);
		}
		return this.calls.call(new CallElements(edit.performance(), edit.seen() + 1, next), actor);
	}

	/** Tell whether the version after the one that was seen is what the act makes. */
	private boolean isDone(EditList edit, List<CallElements.Call> next) {
		return this.book.lists(edit.performance())
			.version(edit.seen() + 1)
			.filter((done) -> withoutIdentity(next)
				.equals(withoutIdentity(done.elements().stream().map(ListEdits::call).toList())))
			.isPresent();
	}

	/** An element that is called for the first time gets its identity only then. */
	private static List<CallElements.Call> withoutIdentity(List<CallElements.Call> calls) {
		return calls.stream()
			.map((call) -> new CallElements.Call(null, call.code(), call.worth(), call.base(), call.review()))
			.toList();
	}

	/**
	 * What changes nothing makes no version, and takes no word of the controller away.
	 */
	private CalledListView newest(EditList edit) {
		return this.book.list(edit.performance())
			.map(CalledList::view)
			.orElseThrow(() -> new RuleViolationException("nothing-to-undo", "No element is called yet."));
	}

	private List<CalledElement> version(PerformanceId performance, int sequence) {
		return this.book.lists(performance).version(sequence).map(CalledList::elements).orElseGet(() -> List.of());
	}

	/** Tell what others made of the list since a version of it was seen. */
	@Transactional(readOnly = true)
	public List<ListChange> since(PerformanceId performance, int seen) {
		List<ListChange> changes = new ArrayList<>();
		List<CalledElement> before = version(performance, seen);
		for (CalledList list : this.book.lists(performance).versions()) {
			if (list.sequence() > seen) {
				CalledListView view = list.view();
				changes.add(new ListChange(view.sequence(), view.calledBy(), view.receivedAt(),
						new ListDifference(before, view.elements()).words()));
				before = view.elements();
			}
		}
		return changes;
	}

	/**
	 * Add a deduction, such as a fall.
	 * @param seen the version of the deductions that was seen, 0 before the first
	 * @throws RuleViolationException if the rule set has no such item
	 * @throws rimebook.shared.ConflictException {@code list-sequence-taken} if somebody
	 * else noted something since
	 */
	@Transactional
	public DeductionListView deduct(PerformanceId performance, int seen, String item, int count, Actor actor) {
		List<NoteDeductions.Item> items = noted(performance, seen);
		items.add(new NoteDeductions.Item(item, count));
		return noteOnce(new NoteDeductions(performance, seen + 1, items), actor);
	}

	/**
	 * Take a deduction back; errors as for {@link #deduct}.
	 * @param index which one of the list that was seen, from 0
	 */
	@Transactional
	public DeductionListView takeBack(PerformanceId performance, int seen, int index, Actor actor) {
		List<NoteDeductions.Item> items = noted(performance, seen);
		if (index < 0 || index >= items.size()) {
			throw new RuleViolationException("deduction-unknown", "index", "Choose a deduction of the list.");
		}
		items.remove(index);
		return noteOnce(new NoteDeductions(performance, seen + 1, items), actor);
	}

	private DeductionListView noteOnce(NoteDeductions note, Actor actor) {
		if (this.book.deductionVersion(note.performance(), note.sequence())
			.filter((done) -> note.items().equals(items(done)))
			.isPresent()) {
			return this.deductions.ofPerformance(note.performance()).orElseThrow();
		}
		PerformanceRegister.requireOnIce(this.performances.hold(note.performance()));
		return this.deductions.note(note, actor);
	}

	private List<NoteDeductions.Item> noted(PerformanceId performance, int seen) {
		this.performances.hold(performance);
		return new ArrayList<>(
				this.book.deductionVersion(performance, seen).map(TechnicalDesk::items).orElseGet(List::of));
	}

	private static List<NoteDeductions.Item> items(DeductionList list) {
		return list.items().stream().map((noted) -> new NoteDeductions.Item(noted.item(), noted.count())).toList();
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

}
