package rimebook.points;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.clock.ClockView;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.performances.SkatingClock;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.PointsRules;
import rimebook.wording.Sentence;

/**
 * Takes the deductions of a performance on the ice, item by item from the table of its
 * rule set. Each list is a new version of the one before.
 */
@Service
public class DeductionNotes {

	private static final int MOST_CHANGES = 1000;

	private static final int MOST_ITEMS = 50;

	private static final int HIGHEST_COUNT = 1000;

	private final PerformanceRegister performances;

	private final DeductionListRepository lists;

	private final PointsBook book;

	private final SkatingClock clocks;

	private final Acts acts;

	DeductionNotes(PerformanceRegister performances, DeductionListRepository lists, PointsBook book,
			SkatingClock clocks, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.lists = lists;
		this.book = book;
		this.clocks = clocks;
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
		PerformanceView performance = this.performances.hold(note.performance());
		check(note.items(), this.book.ruleSet(performance.segment()));
		Optional<DeductionList> before = this.book.deductions(performance.id());
		if (before.isPresent() && before.get().sequence() >= note.sequence()) {
			return repeated(before.get(), note);
		}
		List<NotedDeduction> items = noted(note.items(), items(before), actor);
		return write(performance, before, note.sequence(), items, actor);
	}

	/**
	 * Add one deduction of whoever notes it, for a desk that sends an act until it has an
	 * answer: the same act of the same person is done once.
	 * @param seen the version of the list that was looked at, 0 before the first
	 * @return the deductions as they count now
	 * @throws RuleViolationException naming the field: {@code item} that the table does
	 * not have, {@code count} out of range
	 * @throws ConflictException as for {@link #note}
	 * @throws rimebook.shared.NotFoundException as for {@link #note}
	 */
	@Transactional
	public DeductionListView addOnce(PerformanceId id, int seen, NoteDeductions.Item item, Actor actor) {
		PerformanceView performance = this.performances.hold(id);
		List<NotedDeduction> items = withFurther(performance, seen, noted(item, actor.name(), null));
		return done(performance, seen, items).orElseGet(() -> next(performance, seen, items, actor));
	}

	/**
	 * Add one deduction, perhaps for what the clock found; it goes with the touch that it
	 * rests on.
	 * @param seen the version of the list that was looked at, 0 before the first
	 * @param origin who noted it, and what for
	 * @throws RuleViolationException as for {@link #addOnce}
	 * @throws ConflictException as for {@link #note}, {@code stale-version} if that touch
	 * was taken back meanwhile
	 * @throws rimebook.shared.NotFoundException as for {@link #note}
	 */
	@Transactional
	public DeductionListView add(PerformanceId id, int seen, NoteDeductions.Item item, Origin origin, Actor actor) {
		PerformanceView performance = this.performances.hold(id);
		this.clocks.requireFound(performance, origin.touch());
		return next(performance, seen,
				withFurther(performance, seen, noted(item, origin.noter().words(actor.name()), origin.touch())), actor);
	}

	private List<NotedDeduction> withFurther(PerformanceView performance, int seen, NotedDeduction noted) {
		check("", new NoteDeductions.Item(noted.item(), noted.count()), this.book.ruleSet(performance.segment()));
		List<NotedDeduction> items = new ArrayList<>(items(this.book.deductionVersion(performance.id(), seen)));
		requireRoom(items.size() + 1);
		items.add(noted);
		return items;
	}

	/**
	 * Take one deduction out again; done once as by {@link #addOnce}, since taking out
	 * what is out already changes nothing.
	 * @param seen the version of the list that was looked at
	 * @param place where it stands in that list, from 0
	 * @throws RuleViolationException {@code deduction-unknown} if nothing stands there
	 * @throws ConflictException as for {@link #note}
	 */
	@Transactional
	public DeductionListView remove(PerformanceId id, int seen, int place, Actor actor) {
		PerformanceView performance = this.performances.hold(id);
		List<NotedDeduction> items = new ArrayList<>(items(this.book.deductionVersion(id, seen)));
		if (place < 0 || place >= items.size()) {
			throw new RuleViolationException("deduction-unknown", "index", Sentence.of("points.deduction-unknown"));
		}
		items.remove(place);
		return done(performance, seen, items).orElseGet(() -> next(performance, seen, items, actor));
	}

	/** What counts now, if the version after the one that was seen says just that. */
	private Optional<DeductionListView> done(PerformanceView performance, int seen, List<NotedDeduction> items) {
		return this.book.deductionVersion(performance.id(), seen + 1)
			.filter((made) -> made.says(items))
			.flatMap((made) -> this.book.deductions(performance.id()))
			.map(DeductionList::view);
	}

	private DeductionListView next(PerformanceView performance, int seen, List<NotedDeduction> items, Actor actor) {
		Optional<DeductionList> newest = this.book.deductions(performance.id());
		if (newest.map(DeductionList::sequence).orElse(0) != seen) {
			throw changedMeanwhile();
		}
		return write(performance, newest, seen + 1, items, actor);
	}

	/** Take out what was deducted for touches of the clock that count no longer. */
	void takeOut(PerformanceView performance, Set<Instant> touches, Actor actor) {
		Optional<DeductionList> before = this.book.deductions(performance.id());
		List<NotedDeduction> left = items(before).stream().filter((item) -> !item.isTakenFor(touches)).toList();
		if (left.size() < items(before).size()) {
			write(performance, before, before.orElseThrow().sequence() + 1, left, actor);
		}
	}

	private static List<NotedDeduction> items(Optional<DeductionList> list) {
		return list.map(DeductionList::items).orElse(List.of());
	}

	private DeductionListView write(PerformanceView performance, Optional<DeductionList> before, int sequence,
			List<NotedDeduction> items, Actor actor) {
		PerformanceRegister.requireOnIce(performance);
		DeductionList list = new DeductionList(this.acts.nextId(), performance.id(), sequence, items,
				new CalledList.Written(CardOrigin.KEYED, actor.name(), this.acts.now()));
		this.lists.save(list);
		this.acts.publish(AuditedChange.of(actor, "performance", performance.id(), "deductions.noted")
			.from(before.map(DeductionList::inWords).orElse(""), list.inWords()));
		return list.view();
	}

	private NotedDeduction noted(NoteDeductions.Item item, String by, @Nullable Instant touch) {
		return new NotedDeduction(item.item(), item.count(), by, this.acts.now().truncatedTo(ChronoUnit.MILLIS), touch);
	}

	private static void check(List<NoteDeductions.Item> items, PointsRules rules) {
		requireRoom(items.size());
		for (int i = 0; i < items.size(); i++) {
			check("items[" + i + "].", items.get(i), rules);
		}
	}

	private static void requireRoom(int items) {
		if (items > MOST_ITEMS) {
			throw new RuleViolationException("too-many-deductions", "items",
					Sentence.of("points.too-many-deductions", MOST_ITEMS, items));
		}
	}

	private static void check(String field, NoteDeductions.Item item, PointsRules rules) {
		if (rules.deduction(item.item()).isEmpty()) {
			throw new RuleViolationException("unknown-deduction", field + "item",
					Sentence.of("points.unknown-deduction", item.item()));
		}
		Required.number(field + "count", item.count(), 1, HIGHEST_COUNT);
	}

	private static DeductionListView repeated(DeductionList sent, NoteDeductions note) {
		boolean same = sent.sequence() == note.sequence() && sent.items().size() == note.items().size();
		for (int i = 0; same && i < note.items().size(); i++) {
			same = sent.items().get(i).isSameAs(note.items().get(i));
		}
		if (!same) {
			throw changedMeanwhile();
		}
		return sent.view();
	}

	private static ConflictException changedMeanwhile() {
		return new ConflictException("list-sequence-taken", Sentence.of("points.deductions-taken"));
	}

	/** Whoever noted an item first stays named beside it. */
	private List<NotedDeduction> noted(List<NoteDeductions.Item> items, List<NotedDeduction> before, Actor actor) {
		List<NotedDeduction> known = new ArrayList<>(before);
		List<NotedDeduction> noted = new ArrayList<>();
		for (NoteDeductions.Item item : items) {
			Optional<NotedDeduction> old = known.stream().filter((each) -> each.isSameAs(item)).findFirst();
			old.ifPresent(known::remove);
			noted.add(old.orElseGet(() -> noted(item, actor.name(), null)));
		}
		return noted;
	}

	/** Return the deductions noted for a performance; empty before the first list. */
	@Transactional(readOnly = true)
	public Optional<DeductionListView> ofPerformance(PerformanceId performance) {
		return this.book.deductions(performance).map(DeductionList::view);
	}

	/**
	 * All deductions of a performance, to take the place of those noted before.
	 *
	 * @param sequence 1 for the first list of a performance, one more for each change
	 * @param items in the order noted; empty when all are taken back
	 */
	public record NoteDeductions(PerformanceId performance, int sequence, List<Item> items) {

		public NoteDeductions {
			items = List.copyOf(items);
		}

		/**
		 * One deduction.
		 *
		 * @param item its short name in the table of the rule set
		 * @param count how many, or how much, in the unit of the item
		 */
		public record Item(String item, int count) {
		}

	}

	/**
	 * Where a deduction comes from.
	 *
	 * @param touch the touch of the clock that it is taken for, as
	 * {@link ClockView.ClockFinding#since}; {@code null} for whatever the clock did not
	 * find
	 */
	public record Origin(Noter noter, @Nullable Instant touch) {
	}

	/** Who noted a deduction that somebody else keys in. */
	public enum Noter {

		/** Whoever keys it in. */
		SELF(""),

		/** The technical panel, such as for falls and illegal elements. */
		TECHNICAL_PANEL("technical panel"),

		/** The majority of the judges with the referee, such as for the costume. */
		JUDGES("majority of the panel");

		private final String words;

		Noter(String words) {
			this.words = words;
		}

		/** Who stands beside the deduction, when that person keyed it in. */
		String words(String person) {
			return this.words.isEmpty() ? person : this.words + ", keyed in by " + person;
		}

	}

	/**
	 * The deductions that count now.
	 *
	 * @param sequence the version of the list, from 1
	 * @param receivedAt when it was received, UTC
	 */
	public record DeductionListView(int sequence, List<NotedDeduction> deductions, Instant receivedAt) {

		public DeductionListView {
			deductions = List.copyOf(deductions);
		}

	}

}
