package rimebook.marks;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.PointsRules;

/**
 * Takes the deductions of a performance on the ice, item by item from the table of its
 * rule set. Each list is a new version of the one before.
 */
@Service
public class DeductionNotes {

	private static final int MOST_CHANGES = 1000;

	private static final int MOST_ITEMS = 50;

	private static final int HIGHEST_COUNT = 1000;

	private final OpenPerformances performances;

	private final DeductionListRepository lists;

	private final PointsBook book;

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	DeductionNotes(OpenPerformances performances, DeductionListRepository lists, PointsBook book, Ids ids, Clock clock,
			ApplicationEventPublisher events) {
		this.performances = performances;
		this.lists = lists;
		this.book = book;
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Take the deductions of a performance.
	 * @return the list as it counts now; for a repetition of the newest one the first
	 * answer again
	 * @throws RuleViolationException naming the field, such as {@code items[0].count}: an
	 * item that the table does not have, a count out of range
	 * @throws ConflictException {@code list-sequence-taken} if somebody else sent that
	 * change already, {@code card-closed} or {@code performance-not-open} if nothing is
	 * taken now
	 * @throws rimebook.shared.NotFoundException if there is no such performance, or its
	 * event is not judged by points
	 */
	@Transactional
	public DeductionListView note(NoteDeductions note, Actor actor) {
		Required.number("sequence", note.sequence(), 1, MOST_CHANGES);
		Performance performance = this.performances.hold(note.performance());
		check(note.items(), this.book.ruleSet(performance.segment()));
		Optional<DeductionList> before = this.book.deductions(performance.id());
		if (before.isPresent() && before.get().sequence() >= note.sequence()) {
			return repeated(before.get(), note);
		}
		OpenPerformances.requireOnIce(performance);
		List<NotedDeduction> items = noted(note.items(), before.map(DeductionList::items).orElse(List.of()), actor);
		DeductionList list = new DeductionList(this.ids.next(), performance.id(), note.sequence(), items,
				CardOrigin.KEYED, actor.name(), this.clock.instant());
		this.lists.save(list);
		this.events.publishEvent(AuditedChange.of(actor, "performance", performance.id(), "deductions.noted")
			.from(before.map(DeductionList::inWords).orElse(""), list.inWords()));
		return list.view();
	}

	private static void check(List<NoteDeductions.Item> items, PointsRules rules) {
		if (items.size() > MOST_ITEMS) {
			throw new RuleViolationException("too-many-deductions", "items",
					"A performance has at most " + MOST_ITEMS + " deductions, not " + items.size() + ".");
		}
		for (int i = 0; i < items.size(); i++) {
			NoteDeductions.Item item = items.get(i);
			if (rules.deduction(item.item()).isEmpty()) {
				throw new RuleViolationException("unknown-deduction", "items[" + i + "].item",
						"The rule set has no deduction '" + item.item() + "'; choose one of its table.");
			}
			Required.number("items[" + i + "].count", item.count(), 1, HIGHEST_COUNT);
		}
	}

	private static DeductionListView repeated(DeductionList sent, NoteDeductions note) {
		boolean same = sent.sequence() == note.sequence() && sent.items().size() == note.items().size();
		for (int i = 0; same && i < note.items().size(); i++) {
			same = sent.items().get(i).isSameAs(note.items().get(i));
		}
		if (!same) {
			throw new ConflictException("list-sequence-taken",
					"Other deductions were received meanwhile; nothing was changed. Look at them, then repeat what is still needed.");
		}
		return sent.view();
	}

	/** Whoever noted an item first stays named beside it. */
	private static List<NotedDeduction> noted(List<NoteDeductions.Item> items, List<NotedDeduction> before,
			Actor actor) {
		List<NotedDeduction> known = new ArrayList<>(before);
		List<NotedDeduction> noted = new ArrayList<>();
		for (NoteDeductions.Item item : items) {
			Optional<NotedDeduction> old = known.stream().filter((each) -> each.isSameAs(item)).findFirst();
			old.ifPresent(known::remove);
			noted.add(old.orElseGet(() -> new NotedDeduction(item.item(), item.count(), actor.name())));
		}
		return noted;
	}

	/** Return the deductions noted for a performance; empty before the first list. */
	@Transactional(readOnly = true)
	public Optional<DeductionListView> ofPerformance(PerformanceId performance) {
		return this.book.deductions(performance).map(DeductionList::view);
	}

}
