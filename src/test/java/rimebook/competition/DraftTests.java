package rimebook.competition;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.shared.RuleViolationException;
import rimebook.tabulation.SegmentKind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

class DraftTests {

	private static final LocalDate DAY = LocalDate.of(2027, 2, 13);

	@Test
	void competitionEndsNoEarlierThanItBegins() {
		assertRefused(() -> competition(DAY, DAY.minusDays(1)), "days-reversed", "lastDay");
		assertRefused(() -> competition(DAY, DAY.plusDays(61)), "days-too-many", "lastDay");
		assertThat(competition(DAY, DAY).name()).isEqualTo("Frostlight Trophy");
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, -1, 1000 })
	void factorHasBounds(int factor) {
		assertRefused(() -> new DraftEvent.DraftSegment("Free", SegmentKind.FREE, factor, 240, 10),
				"field-out-of-range", "factor");
	}

	@ParameterizedTest
	@ValueSource(ints = { 29, 601 })
	void programmeLengthHasBounds(int seconds) {
		assertRefused(() -> new DraftEvent.DraftSegment("Free", SegmentKind.FREE, 100, seconds, 10),
				"field-out-of-range", "programmeSeconds");
	}

	@ParameterizedTest
	@ValueSource(ints = { -1, 121 })
	void toleranceHasBounds(int seconds) {
		assertRefused(() -> new DraftEvent.DraftSegment("Free", SegmentKind.FREE, 100, 240, seconds),
				"field-out-of-range", "toleranceSeconds");
	}

	@ParameterizedTest
	@ValueSource(ints = { -1, 121 })
	void shortestHasBoundsOfItsOwn(int seconds) {
		assertRefused(() -> new DraftEvent.DraftSegment("Free", SegmentKind.FREE, 100, 240, 10, seconds),
				"field-out-of-range", "shorterSeconds");
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, 16 })
	void panelHasBounds(int judges) {
		assertRefused(() -> CompetitionFixtures.anEvent("Junior", judges), "field-out-of-range", "judges");
	}

	@Test
	void evenPanelNeedsAReason() {
		assertRefused(() -> event(4, " "), "panel-even", "judges");
		assertThat(event(4, " Judge ill ").judging().evenPanelReason()).isEqualTo("Judge ill");
	}

	@Test
	void oddPanelKeepsNoReason() {
		assertThat(event(5, "Judge ill").judging().evenPanelReason()).isEmpty();
	}

	@Test
	void aPanelForPointsHasThreeToNineJudgesAndARuleSet() {
		DraftEvent.PointsChoice senior = new DraftEvent.PointsChoice("synchronized-2025-26", "senior");
		assertThat(points(4, senior).judging().evenPanelReason()).isEmpty();
		assertRefused(() -> points(2, senior), "field-out-of-range", "judges");
		assertRefused(() -> points(10, senior), "field-out-of-range", "judges");
		assertRefused(() -> points(7, null), "rule-set-missing", "points");
	}

	@Test
	void placementJudgingKeepsNoRuleSetOfPoints() {
		DraftEvent event = new DraftEvent("Junior",
				new DraftEvent.Judging(JudgingMethod.MAJORITY, 5, "", JudgingPolicies.usual(),
						new DraftEvent.PointsChoice("synchronized-2025-26", "junior"), true),
				List.of(CompetitionFixtures.aFree()));
		assertThat(event.judging().points()).isNull();
	}

	private static DraftEvent points(int judges, DraftEvent.@Nullable PointsChoice choice) {
		return new DraftEvent("Senior",
				new DraftEvent.Judging(JudgingMethod.POINTS, judges, "ignored", JudgingPolicies.usual(), choice, true),
				List.of(CompetitionFixtures.aFree()));
	}

	@Test
	void eventHasOneToThreeSegmentsOfDifferentNames() {
		DraftEvent.DraftSegment free = CompetitionFixtures.aFree();
		assertRefused(() -> event(List.of()), "segments-number", "segments");
		assertRefused(() -> event(Collections.nCopies(4, free)), "segments-number", "segments");
		assertRefused(() -> event(List.of(free, free)), "segments-same-name", "segments");
	}

	private static DraftCompetition competition(LocalDate first, LocalDate last) {
		return new DraftCompetition(" Frostlight Trophy ", "Skerrywick", ZoneOffset.UTC, first, last, "Rulebook");
	}

	private static DraftEvent event(int judges, String reason) {
		return new DraftEvent("Junior",
				new DraftEvent.Judging(JudgingMethod.MAJORITY, judges, reason, JudgingPolicies.usual(), null, true),
				List.of(CompetitionFixtures.aFree()));
	}

	private static DraftEvent event(List<DraftEvent.DraftSegment> segments) {
		return new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 5), segments);
	}

	private static void assertRefused(ThrowingCallable act, String code, String field) {
		RuleViolationException refusal = catchThrowableOfType(RuleViolationException.class, act);
		assertThat(refusal.code()).isEqualTo(code);
		assertThat(refusal.field()).isEqualTo(field);
	}

}
