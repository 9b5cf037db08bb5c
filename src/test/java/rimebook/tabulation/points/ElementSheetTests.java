package rimebook.tabulation.points;

import java.util.List;
import java.util.Set;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.tabulation.points.PointsFixtures.refusal;

/** A list of elements while it is called, graded, corrected and authorised. */
class ElementSheetTests {

	private static final ElementSheet EMPTY = ElementSheet.open(PointsFixtures.VALUES, 3);

	/** ME4 has key 1, PB3 key 2; all three judges have graded both. */
	private static final ElementSheet GRADED = graded(
			graded(EMPTY.call("ME4", ElementWorth.COUNTS).call("PB3", ElementWorth.COUNTS), 1, 1, 2, 3), 2, -1, 0, 1);

	private static ElementSheet graded(ElementSheet sheet, int key, int... grades) {
		ElementSheet graded = sheet;
		for (int i = 0; i < grades.length; i++) {
			graded = graded.grade(key, i + 1, grades[i]);
		}
		return graded;
	}

	private static ElementSheet submitted(ElementSheet sheet) {
		return sheet.submit(1).submit(2).submit(3);
	}

	@Test
	void aCalledElementAsksEveryJudge() {
		ElementSheet sheet = EMPTY.call("ME4", ElementWorth.COUNTS);
		assertThat(sheet.lastKey()).isEqualTo(1);
		assertThat(sheet.questions()).containsExactly(new GradeQuestion(1, 1, GradeState.ASKED),
				new GradeQuestion(2, 1, GradeState.ASKED), new GradeQuestion(3, 1, GradeState.ASKED));
		assertThat(sheet.grade(1, 2, 5).questions()).extracting(GradeQuestion::judge).containsExactly(1, 3);
		assertThat(EMPTY.elements()).isEmpty();
	}

	@Test
	void anElementWithoutValueAsksNobody() {
		assertThat(EMPTY.call("ME", ElementWorth.NO_VALUE).call("ME4", ElementWorth.TOO_MANY).questions()).isEmpty();
	}

	@Test
	void aReadySheetGivesNumberedElements() {
		ElementSheet sheet = submitted(GRADED).authorise();
		assertThat(sheet.isReady()).isTrue();
		assertThat(sheet.judged()).containsExactly(JudgedElement.of(1, "ME4", 1, 2, 3),
				JudgedElement.of(2, "PB3", -1, 0, 1));
		assertThat(sheet.elements()).extracting(CalledElement::state).containsOnly(ElementState.CONFIRMED);
	}

	@Test
	void scoresNeedAnAuthorisedListAndEverySheet() {
		assertThat(submitted(GRADED).isReady()).isFalse();
		ElementSheet oneMissing = GRADED.submit(1).submit(3).authorise();
		assertThat(oneMissing.isReady()).isFalse();
		assertThat(refusal(oneMissing::judged).code()).isEqualTo("sheet-not-ready");
		assertThat(oneMissing.submit(2).isReady()).isTrue();
	}

	@Test
	void anotherElementKeepsTheGradesAndAsksToConfirmThem() {
		ElementSheet sheet = submitted(GRADED).change(1, "AC2", ElementWorth.COUNTS);
		assertThat(sheet.elements().get(0).code()).isEqualTo("AC2");
		assertThat(sheet.elements().get(0).grades()).extracting(JudgeGrade::grade).containsExactly(1, 2, 3);
		assertThat(sheet.questions()).containsExactly(new GradeQuestion(1, 1, GradeState.TO_CONFIRM),
				new GradeQuestion(2, 1, GradeState.TO_CONFIRM), new GradeQuestion(3, 1, GradeState.TO_CONFIRM));
		assertThat(sheet.submitted()).isEmpty();
		ElementSheet confirmed = submitted(graded(sheet, 1, 1, 1, 3)).authorise();
		assertThat(confirmed.judged().get(0)).isEqualTo(JudgedElement.of(1, "AC2", 1, 1, 3));
		assertThat(confirmed.judged().get(1)).isEqualTo(JudgedElement.of(2, "PB3", -1, 0, 1));
	}

	@Test
	void anotherElementBeforeAGradeStillAsksForOne() {
		ElementSheet sheet = EMPTY.call("ME4", ElementWorth.COUNTS)
			.grade(1, 2, 4)
			.change(1, "AC2", ElementWorth.COUNTS);
		assertThat(sheet.questions()).extracting(GradeQuestion::state)
			.containsExactly(GradeState.ASKED, GradeState.TO_CONFIRM, GradeState.ASKED);
	}

	@Test
	void aChangeIntoTheSameAsksNobody() {
		assertThat(submitted(GRADED).change(1, "ME4", ElementWorth.COUNTS)).isEqualTo(submitted(GRADED));
	}

	@ParameterizedTest
	@ValueSource(strings = { "ME3", "MEB", "ME4<", "ME2<<" })
	void aChangedLevelOrDowngradeAsksNobody(String code) {
		ElementSheet sheet = submitted(GRADED).change(1, code, ElementWorth.COUNTS);
		assertThat(sheet.questions()).isEmpty();
		assertThat(sheet.submitted()).hasSize(3);
		assertThat(sheet.authorise().judged().get(0)).isEqualTo(JudgedElement.of(1, code, 1, 2, 3));
	}

	/**
	 * No value, no grades: Technical Handbook for Synchronized Skating 2018-19. That they
	 * are kept and asked about when it comes back is common practice.
	 */
	@Test
	void losingTheValueVoidsTheGradesAndRegainingItAsksToConfirm() {
		ElementSheet without = submitted(GRADED).change(1, "ME4", ElementWorth.NO_VALUE);
		assertThat(without.questions()).isEmpty();
		assertThat(without.submitted()).containsExactlyInAnyOrder(1, 2, 3);
		assertThat(without.authorise().judged().get(0).worth()).isEqualTo(ElementWorth.NO_VALUE);
		ElementSheet again = without.change(1, "ME4", ElementWorth.COUNTS);
		assertThat(again.questions()).hasSize(3).allMatch((question) -> question.state() == GradeState.TO_CONFIRM);
		assertThat(again.submitted()).isEmpty();
	}

	@Test
	void anInsertionAsksEveryJudgeAndRenumbers() {
		ElementSheet sheet = submitted(GRADED).insertBefore(2, "AC2", ElementWorth.COUNTS);
		assertThat(sheet.elements()).extracting(CalledElement::key).containsExactly(1, 3, 2);
		assertThat(sheet.submitted()).isEmpty();
		assertThat(sheet.questions()).hasSize(3).allMatch((question) -> question.key() == 3);
		assertThat(submitted(graded(sheet, 3, 0, 0, 0)).authorise().judged()).extracting(JudgedElement::code)
			.containsExactly("ME4", "AC2", "PB3");
	}

	@Test
	void aDeletionVoidsTheGradesAndKeepsThem() {
		ElementSheet sheet = submitted(GRADED).delete(1);
		assertThat(sheet.submitted()).hasSize(3);
		assertThat(sheet.authorise().judged()).containsExactly(JudgedElement.of(1, "PB3", -1, 0, 1));
		assertThat(sheet.authorise().elements().get(0).state()).isEqualTo(ElementState.DELETED);
		assertThat(sheet.elements().get(0).grades()).extracting(JudgeGrade::grade).containsExactly(1, 2, 3);
		assertThat(sheet.restore(1).authorise().judged()).hasSize(2);
		assertThat(GRADED.call("AC2", ElementWorth.COUNTS).delete(3).questions()).isEmpty();
		assertThat(GRADED.call("AC2", ElementWorth.COUNTS).delete(3).restore(3).questions()).hasSize(3);
	}

	@Test
	void restoringAnUngradedElementOpensTheSheetsAgain() {
		ElementSheet sheet = submitted(GRADED.call("AC2", ElementWorth.COUNTS).delete(3));
		assertThat(sheet.restore(3).submitted()).isEmpty();
		assertThat(sheet.restore(3).elements().get(2).state()).isEqualTo(ElementState.CALLED);
	}

	/**
	 * The majority of the technical panel decides what is reviewed: ISU, Synchronized
	 * Skating, ISU Judging System. Then the controller authorises the list: Skate Canada,
	 * definition of the technical controller. The states themselves are common practice.
	 */
	@Test
	void aReviewMustBeDecidedFirst() {
		ElementSheet sheet = submitted(GRADED).review(2);
		assertThat(sheet.elements().get(1).state()).isEqualTo(ElementState.UNDER_REVIEW);
		assertThat(refusal(sheet::authorise)).hasMessageContaining("PB3")
			.extracting("code")
			.isEqualTo("element-under-review");
		assertThat(sheet.confirm(2).elements().get(1).state()).isEqualTo(ElementState.CONFIRMED);
		assertThat(sheet.confirm(2).authorise().isReady()).isTrue();
		assertThat(sheet.delete(2).authorise().judged()).hasSize(1);
	}

	@Test
	void nothingMovesOnAnAuthorisedListUntilItIsOpenedAgain() {
		ElementSheet sheet = submitted(GRADED).authorise();
		assertThat(List.<ThrowingCallable>of(() -> sheet.call("ME4", ElementWorth.COUNTS),
				() -> sheet.insertBefore(1, "ME4", ElementWorth.COUNTS),
				() -> sheet.change(1, "ME3", ElementWorth.COUNTS), () -> sheet.review(1), () -> sheet.confirm(1),
				() -> sheet.delete(1), () -> sheet.restore(1), sheet::authorise))
			.allSatisfy((call) -> assertThat(refusal(call).code()).isEqualTo("sheet-authorised"));
		ElementSheet open = sheet.reopen();
		assertThat(open.isReady()).isFalse();
		assertThat(open.submitted()).hasSize(3);
		assertThat(open.delete(1).authorise().judged()).hasSize(1);
		assertThat(refusal(open::reopen).code()).isEqualTo("sheet-open");
	}

	@Test
	void judgesMayGradeAfterTheListIsAuthorised() {
		ElementSheet sheet = EMPTY.call("ME4", ElementWorth.COUNTS).authorise();
		assertThat(submitted(graded(sheet, 1, 1, 1, 1)).isReady()).isTrue();
	}

	@Test
	void aSubmittedSheetIsClosedForItsJudge() {
		ElementSheet sheet = GRADED.submit(2);
		assertThat(refusal(() -> sheet.grade(1, 2, 0))).hasMessageContaining("Judge 2")
			.extracting("code")
			.isEqualTo("sheet-submitted");
		assertThat(sheet.grade(1, 1, 0).elements().get(0).grades().get(0).grade()).isZero();
	}

	@Test
	void aSheetWithQuestionsCannotBeSubmitted() {
		ElementSheet sheet = GRADED.call("AC2", ElementWorth.COUNTS);
		assertThat(refusal(() -> sheet.submit(1))).hasMessageContaining("for 1 element;")
			.extracting("code")
			.isEqualTo("grades-missing");
		assertThat(refusal(() -> sheet.call("AC2", ElementWorth.COUNTS).submit(3)))
			.hasMessageStartingWith("Judge 3 still owes")
			.hasMessageContaining("for 2 elements;");
	}

	/**
	 * An absent mark is none, never 0: recomputed from published protocols. That a judge
	 * may leave the panel of one team is common practice.
	 */
	@Test
	void anAbsentJudgeIsAskedNothingAndCountsNothing() {
		ElementSheet sheet = GRADED.submit(1).submit(2).submit(3).call("AC2", ElementWorth.COUNTS).without(2);
		assertThat(sheet.absent()).containsExactly(2);
		assertThat(sheet.questions()).extracting(GradeQuestion::judge).containsExactly(1, 3);
		assertThat(refusal(() -> sheet.grade(1, 2, 0)).code()).isEqualTo("unknown-judge");
		assertThat(refusal(() -> sheet.submit(2)).code()).isEqualTo("unknown-judge");
		assertThat(refusal(() -> sheet.without(2)).code()).isEqualTo("unknown-judge");
		ElementSheet ready = sheet.grade(3, 1, 1).grade(3, 3, 1).submit(1).submit(3).authorise();
		assertThat(ready.isReady()).isTrue();
		assertThat(ready.judged()).containsExactly(JudgedElement.of(1, "ME4", 1, null, 3),
				JudgedElement.of(2, "PB3", -1, null, 1), JudgedElement.of(3, "AC2", 1, null, 1));
	}

	/** Common practice, as for any absent judge. */
	@Test
	void aJudgeWhoLeavesAfterSubmittingIsNoLongerListed() {
		assertThat(submitted(GRADED).without(3).submitted()).containsExactlyInAnyOrder(1, 2);
	}

	@Test
	void whatIsNotThereIsRefused() {
		assertThat(refusal(() -> GRADED.delete(9)).code()).isEqualTo("unknown-element");
		assertThat(refusal(() -> GRADED.insertBefore(9, "ME4", ElementWorth.COUNTS)).code())
			.isEqualTo("unknown-element");
		assertThat(refusal(() -> GRADED.grade(9, 1, 0)).code()).isEqualTo("unknown-element");
		assertThat(refusal(() -> GRADED.call("XX9", ElementWorth.COUNTS)).code()).isEqualTo("unknown-code");
		assertThat(refusal(() -> GRADED.change(1, "XX9", ElementWorth.COUNTS)).code()).isEqualTo("unknown-code");
		assertThat(refusal(() -> GRADED.call(" ", ElementWorth.NO_VALUE)).code()).isEqualTo("code-missing");
		assertThat(refusal(() -> GRADED.grade(1, 1, 6)).code()).isEqualTo("grade-out-of-range");
		assertThat(List.of(0, 4)).allSatisfy(
				(judge) -> assertThat(refusal(() -> GRADED.grade(1, judge, 0)).code()).isEqualTo("unknown-judge"));
		assertThat(refusal(() -> GRADED.restore(1)).code()).isEqualTo("element-not-deleted");
	}

	@Test
	void nothingButRestoringTouchesADeletedElement() {
		ElementSheet sheet = GRADED.delete(1);
		assertThat(List.<ThrowingCallable>of(() -> sheet.delete(1), () -> sheet.review(1), () -> sheet.confirm(1),
				() -> sheet.change(1, "ME3", ElementWorth.COUNTS), () -> sheet.grade(1, 1, 0)))
			.allSatisfy((call) -> assertThat(refusal(call).code()).isEqualTo("element-deleted"));
	}

	@Test
	void theListHasALimit() {
		ElementSheet full = EMPTY;
		for (int i = 0; i < 100; i++) {
			full = full.call("ME", ElementWorth.NO_VALUE);
		}
		ElementSheet all = full;
		assertThat(refusal(() -> all.call("ME", ElementWorth.NO_VALUE)).code()).isEqualTo("too-many-elements");
		assertThat(all.authorise().elements()).hasSize(100);
	}

	@Test
	void aSheetReadFromElsewhereMustHaveAGradeOfEachJudge() {
		assertThat(refusal(() -> new ElementSheet(PointsFixtures.VALUES, 2, Set.of(), 2, SheetState.OPEN,
				GRADED.elements(), Set.of())))
			.hasMessageContaining("'ME4'")
			.extracting("code")
			.isEqualTo("uneven-panel");
	}

	@Test
	void aPanelMayHaveOneToNinetyNineJudges() {
		assertThat(ElementSheet.open(PointsFixtures.VALUES, 1).call("ME4", ElementWorth.COUNTS).questions()).hasSize(1);
		assertThat(ElementSheet.open(PointsFixtures.VALUES, 99).call("ME4", ElementWorth.COUNTS).questions())
			.hasSize(99);
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, 100, -1 })
	void thePanelHasALimit(int judges) {
		assertThat(refusal(() -> ElementSheet.open(PointsFixtures.VALUES, judges)).code())
			.isEqualTo("panel-out-of-range");
	}

}
