package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

import rimebook.tabulation.TabulationException;

/**
 * The list of elements of one performance while it is called and graded. A value: every
 * change makes a new sheet.
 *
 * <p>
 * Judges may grade as soon as an element is called. Another element in its place, or
 * another worth, keeps their grades but asks each judge who gave one to confirm it; a
 * changed level, part or downgrade asks nobody; an inserted element asks every judge; a
 * deleted one voids its grades and keeps them, so that it can come back. A judge's
 * submitted sheet opens again when the judge is asked something new. Scores are made from
 * an authorised list and submitted sheets only.
 *
 * @param values the table the codes are taken from
 * @param judges seats of the panel
 * @param absent numbers of the judges who are not there and are asked nothing
 * @param lastKey key of the element called last
 * @param state whether the technical panel is done
 * @param elements in the order skated, deleted ones among them
 * @param submitted numbers of the judges who have submitted their sheet
 */
public record ElementSheet(ValueTable values, int judges, Set<Integer> absent, int lastKey, SheetState state,
		List<CalledElement> elements, Set<Integer> submitted) {

	/**
	 * Check the panel.
	 * @throws TabulationException {@code panel-out-of-range}: not 1 to 99 judges;
	 * {@code uneven-panel}: an element with another number of grades
	 */
	public ElementSheet {
		if (judges < 1 || judges > Performance.MOST_JUDGES) {
			throw TabulationException.panelOutOfRange(judges);
		}
		for (CalledElement element : elements) {
			if (element.grades().size() != judges) {
				throw Refusal.unevenGrades(element.code());
			}
		}
		absent = Set.copyOf(absent);
		elements = List.copyOf(elements);
		submitted = Set.copyOf(submitted);
	}

	/**
	 * Begin a sheet.
	 * @param values the table the codes are taken from
	 * @param judges seats of the panel
	 * @return an empty sheet
	 */
	public static ElementSheet open(ValueTable values, int judges) {
		return new ElementSheet(values, judges, Set.of(), 0, SheetState.OPEN, List.of(), Set.of());
	}

	/**
	 * Call an element behind all others.
	 * @param code as called
	 * @param worth whether it counts
	 * @return the sheet with it; its key is {@link #lastKey()}
	 * @throws TabulationException {@code sheet-authorised}, {@code unknown-code} (of an
	 * element that counts), {@code code-missing} or {@code too-many-elements}
	 */
	public ElementSheet call(String code, ElementWorth worth) {
		return insert(this.elements.size(), code, worth);
	}

	/**
	 * Insert an element that was overlooked; every judge is asked for a grade.
	 * @param key of the element before which it was skated
	 * @param code as called
	 * @param worth whether it counts
	 * @return the sheet with it; its key is {@link #lastKey()}
	 * @throws TabulationException as for a call, or {@code unknown-element}
	 */
	public ElementSheet insertBefore(int key, String code, ElementWorth worth) {
		return insert(this.elements.indexOf(element(key)), code, worth);
	}

	private ElementSheet insert(int index, String code, ElementWorth worth) {
		checkOpen();
		checkCode(code, worth);
		if (this.elements.size() >= JudgedElement.HIGHEST_NUMBER) {
			throw Refusal.tooManyElements(JudgedElement.HIGHEST_NUMBER);
		}
		List<CalledElement> all = new ArrayList<>(this.elements);
		all.add(index, CalledElement.of(this.lastKey + 1, code, worth, this.judges));
		return new ElementSheet(this.values, this.judges, this.absent, this.lastKey + 1, this.state, all,
				this.submitted)
			.askedAgain();
	}

	/**
	 * Correct the call of an element; grades given to another element have to be
	 * confirmed.
	 * @param key of the element
	 * @param code as it should have been called
	 * @param worth whether it counts
	 * @return the changed sheet
	 * @throws TabulationException as for a call, {@code unknown-element} or
	 * {@code element-deleted}
	 */
	public ElementSheet change(int key, String code, ElementWorth worth) {
		checkCode(code, worth);
		return onList(key, (element) -> element.changed(code, worth));
	}

	/**
	 * Ask to see an element again.
	 * @param key of the element
	 * @return the changed sheet
	 * @throws TabulationException {@code sheet-authorised}, {@code unknown-element} or
	 * {@code element-deleted}
	 */
	public ElementSheet review(int key) {
		return onList(key, (element) -> element.in(ElementState.UNDER_REVIEW));
	}

	/**
	 * Decide an element as it stands.
	 * @param key of the element
	 * @return the changed sheet
	 * @throws TabulationException {@code sheet-authorised}, {@code unknown-element} or
	 * {@code element-deleted}
	 */
	public ElementSheet confirm(int key) {
		return onList(key, (element) -> element.in(ElementState.CONFIRMED));
	}

	/**
	 * Take an element off the list; its grades are void but kept.
	 * @param key of the element
	 * @return the changed sheet
	 * @throws TabulationException {@code sheet-authorised}, {@code unknown-element} or
	 * {@code element-deleted}
	 */
	public ElementSheet delete(int key) {
		return onList(key, (element) -> element.in(ElementState.DELETED));
	}

	/**
	 * Put a deleted element back with the grades it had.
	 * @param key of the element
	 * @return the changed sheet
	 * @throws TabulationException {@code sheet-authorised}, {@code unknown-element} or
	 * {@code element-not-deleted}
	 */
	public ElementSheet restore(int key) {
		checkOpen();
		if (element(key).isOnTheList()) {
			throw Refusal.elementNotDeleted(element(key).code());
		}
		return replaced(key, (element) -> element.in(ElementState.CALLED)).askedAgain();
	}

	private ElementSheet onList(int key, UnaryOperator<CalledElement> change) {
		checkOpen();
		checkOnTheList(element(key));
		return replaced(key, change).askedAgain();
	}

	/**
	 * Grade an element, or confirm a grade by giving it again.
	 * @param key of the element
	 * @param judge number of the judge, from 1
	 * @param grade within the range of the table
	 * @return the changed sheet
	 * @throws TabulationException {@code unknown-element}, {@code element-deleted},
	 * {@code unknown-judge}, {@code grade-out-of-range} or {@code sheet-submitted}
	 */
	public ElementSheet grade(int key, int judge, int grade) {
		CalledElement element = element(key);
		checkOnTheList(element);
		checkJudge(judge);
		if (!this.values.grades().contains(grade)) {
			throw Refusal.gradeOutOfRange(element.code(), grade, this.values.grades());
		}
		if (this.submitted.contains(judge)) {
			throw Refusal.sheetSubmitted(judge);
		}
		return replaced(key, (graded) -> graded.graded(judge, grade));
	}

	/**
	 * Submit a judge's sheet.
	 * @param judge number of the judge, from 1
	 * @return the changed sheet
	 * @throws TabulationException {@code unknown-judge} or {@code grades-missing}
	 */
	public ElementSheet submit(int judge) {
		checkJudge(judge);
		List<GradeQuestion> open = questions().stream().filter((question) -> question.judge() == judge).toList();
		if (!open.isEmpty()) {
			throw Refusal.gradesMissing(judge, open.size());
		}
		Set<Integer> all = new HashSet<>(this.submitted);
		all.add(judge);
		return withSubmitted(all);
	}

	/**
	 * Go on without a judge; grades given so far no longer count.
	 * @param judge number of the judge, from 1
	 * @return the changed sheet
	 * @throws TabulationException {@code unknown-judge}
	 */
	public ElementSheet without(int judge) {
		checkJudge(judge);
		Set<Integer> all = new HashSet<>(this.absent);
		all.add(judge);
		return new ElementSheet(this.values, this.judges, all, this.lastKey, this.state, this.elements, this.submitted)
			.askedAgain();
	}

	/**
	 * Authorise the list: elements called but not reviewed are confirmed with it.
	 * @return the changed sheet
	 * @throws TabulationException {@code sheet-authorised} or
	 * {@code element-under-review}
	 */
	public ElementSheet authorise() {
		checkOpen();
		this.elements.stream()
			.filter((element) -> element.state() == ElementState.UNDER_REVIEW)
			.findFirst()
			.ifPresent((element) -> {
				throw Refusal.elementUnderReview(element.code());
			});
		return in(SheetState.AUTHORISED,
				this.elements.stream()
					.map((element) -> element.isOnTheList() ? element.in(ElementState.CONFIRMED) : element)
					.toList());
	}

	/**
	 * Open an authorised list again.
	 * @return the changed sheet
	 * @throws TabulationException {@code sheet-open}
	 */
	public ElementSheet reopen() {
		if (this.state == SheetState.OPEN) {
			throw Refusal.sheetOpen();
		}
		return in(SheetState.OPEN, this.elements);
	}

	/**
	 * List what the judges who are there still owe.
	 * @return by judge, within a judge in the order skated
	 */
	public List<GradeQuestion> questions() {
		return present().stream()
			.flatMap((judge) -> this.elements.stream()
				.filter((element) -> element.owesGrade(judge))
				.map((element) -> new GradeQuestion(judge, element.key(), element.grades().get(judge - 1).state())))
			.toList();
	}

	private List<Integer> present() {
		return IntStream.rangeClosed(1, this.judges).filter((judge) -> !this.absent.contains(judge)).boxed().toList();
	}

	/**
	 * Return whether scores may be made.
	 * @return {@code true} once the list is authorised and every judge who is there has
	 * submitted
	 */
	public boolean isReady() {
		return this.state == SheetState.AUTHORISED && this.submitted.containsAll(present());
	}

	/**
	 * Return the elements for tabulation, numbered in the order skated. Grades of absent
	 * judges are absent.
	 * @return those on the list
	 * @throws TabulationException {@code sheet-not-ready}
	 */
	public List<JudgedElement> judged() {
		if (!isReady()) {
			throw Refusal.sheetNotReady();
		}
		List<CalledElement> onTheList = this.elements.stream().filter(CalledElement::isOnTheList).toList();
		return IntStream.range(0, onTheList.size())
			.mapToObj((i) -> onTheList.get(i).judged(i + 1, this.absent))
			.toList();
	}

	private CalledElement element(int key) {
		return this.elements.stream()
			.filter((element) -> element.key() == key)
			.findFirst()
			.orElseThrow(() -> Refusal.unknownElement(key));
	}

	private void checkOpen() {
		if (this.state == SheetState.AUTHORISED) {
			throw Refusal.sheetAuthorised();
		}
	}

	private void checkCode(String code, ElementWorth worth) {
		if (code.isBlank()) {
			throw Refusal.blankCode();
		}
		if (worth == ElementWorth.COUNTS) {
			this.values.value(code);
		}
	}

	private void checkJudge(int judge) {
		if (!present().contains(judge)) {
			throw Refusal.unknownJudge(judge);
		}
	}

	private static void checkOnTheList(CalledElement element) {
		if (!element.isOnTheList()) {
			throw Refusal.elementDeleted(element.code());
		}
	}

	private ElementSheet replaced(int key, UnaryOperator<CalledElement> change) {
		return in(this.state,
				this.elements.stream()
					.map((element) -> (element.key() == key) ? change.apply(element) : element)
					.toList());
	}

	private ElementSheet in(SheetState other, List<CalledElement> changed) {
		return new ElementSheet(this.values, this.judges, this.absent, this.lastKey, other, changed, this.submitted);
	}

	private ElementSheet withSubmitted(Set<Integer> judgesDone) {
		return new ElementSheet(this.values, this.judges, this.absent, this.lastKey, this.state, this.elements,
				judgesDone);
	}

	/** A judge who is asked something new has not submitted any more. */
	private ElementSheet askedAgain() {
		Set<Integer> done = new HashSet<>(this.submitted);
		questions().forEach((question) -> done.remove(question.judge()));
		done.removeAll(this.absent);
		return withSubmitted(done);
	}

}
