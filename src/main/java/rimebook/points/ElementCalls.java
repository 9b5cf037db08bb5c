package rimebook.points;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.tabulation.points.JudgedElement;
import rimebook.wording.Sentence;

/**
 * Takes the elements as they are called for a performance on the ice. Each list is a new
 * version of the one before; the grades of an element stay with it as long as it keeps
 * its identity.
 */
@Service
public class ElementCalls {

	private static final int MOST_CHANGES = 1000;

	private final PerformanceRegister performances;

	private final CalledListRepository lists;

	private final PointsBook book;

	private final ControllersWord words;

	private final Acts acts;

	ElementCalls(PerformanceRegister performances, CalledListRepository lists, PointsBook book, ControllersWord words,
			Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.lists = lists;
		this.book = book;
		this.words = words;
	}

	/**
	 * Take a list of elements.
	 * @return the list as it counts now; for a repetition of the newest one the first
	 * answer again
	 * @throws rimebook.shared.RuleViolationException naming the field, such as
	 * {@code calls[2].code}: a code that the table of values does not have, a base value
	 * out of range, no element at all
	 * @throws ConflictException {@code list-sequence-taken} if somebody else sent that
	 * change already, {@code card-closed} or {@code performance-not-open} if calls are
	 * not taken now
	 * @throws rimebook.shared.NotFoundException if there is no such performance, or its
	 * event is not judged by points
	 */
	@Transactional
	public CalledListView call(CallElements calls, Actor actor) {
		Required.number("sequence", calls.sequence(), 1, MOST_CHANGES);
		PerformanceView performance = this.performances.hold(calls.performance());
		Optional<CalledList> before = this.book.list(performance.id());
		List<CalledElement> elements = new CallCheck(this.book.rules(performance.segment()).values(), this.acts::nextId)
			.elements(calls.calls(), this.book.lists(performance.id()).everCalled());
		if (before.isPresent() && before.get().sequence() >= calls.sequence()) {
			return repeated(before.get(), calls, elements);
		}
		PerformanceRegister.requireOnIce(performance);
		CalledList list = new CalledList(this.acts.nextId(), performance.id(), calls.sequence(), elements,
				new CalledList.Written(CardOrigin.KEYED, actor.name(), this.acts.now()));
		this.lists.save(list);
		before.flatMap(this.words::on).ifPresent((word) -> reopened(performance, word, actor));
		this.acts.publish(AuditedChange.of(actor, "performance", performance.id(), "elements.called")
			.from(before.map(CalledList::inWords).orElse(""), list.inWords()));
		return list.view();
	}

	/** The controller's word stands for the list before; this one is open again. */
	private void reopened(PerformanceView performance, ListAuthorisations.Authorised word, Actor actor) {
		this.acts.publish(AuditedChange.of(actor, "performance", performance.id(), "elements.opened-again")
			.from("authorised by " + word.inWords(), "open"));
	}

	private static CalledListView repeated(CalledList sent, CallElements calls, List<CalledElement> elements) {
		if (sent.sequence() != calls.sequence() || !CallCheck.areSame(sent.elements(), elements)) {
			throw new ConflictException("list-sequence-taken", Sentence.of("points.list-taken"));
		}
		return sent.view();
	}

	/** Return the elements called for a performance; empty before the first list. */
	@Transactional(readOnly = true)
	public Optional<CalledListView> ofPerformance(PerformanceId performance) {
		return this.book.list(performance).map(CalledList::view);
	}

	/**
	 * The whole list of called elements in the order skated, to take the place of the
	 * list before.
	 *
	 * @param sequence 1 for the first list of a performance, one more for each change
	 */
	public record CallElements(PerformanceId performance, int sequence, List<Call> calls) {

		public CallElements {
			calls = List.copyOf(calls);
		}

		/**
		 * One element.
		 *
		 * @param element its identity in the list before, {@code null} for one that is
		 * new
		 * @param base in place of the base value in the table, in hundredths;
		 * {@code null} where the table holds
		 * @param review whether the technical panel still looks at it again
		 */
		public record Call(@Nullable UUID element, String code, JudgedElement.ElementWorth worth,
				@Nullable Integer base, boolean review) {

			/** As the full form, not under review. */
			public Call(@Nullable UUID element, String code, JudgedElement.ElementWorth worth, @Nullable Integer base) {
				this(element, code, worth, base, false);
			}

		}

	}

}
