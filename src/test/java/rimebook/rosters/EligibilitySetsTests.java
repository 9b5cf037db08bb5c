package rimebook.rosters;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;

import rimebook.rosters.eligibility.EligibilityRules;

import static org.assertj.core.api.Assertions.assertThat;

class EligibilitySetsTests {

	private static final LocalDate FEBRUARY = LocalDate.of(2027, 2, 12);

	private final EligibilitySets sets = new EligibilitySets();

	@Test
	void everyFigureSaysWhereItWasRead() {
		assertThat(this.sets.all()).hasSize(6).allSatisfy((set) -> {
			assertThat(set.title()).isNotBlank();
			assertThat(set.sources()).isNotEmpty().allSatisfy((source) -> assertThat(source.getValue()).isNotBlank());
		});
	}

	/** 16, 4 and 20: ISU Media Guide 2019/20; 13 to 18: ISU Rule 108 for singles. */
	@Test
	void juniorsAreAsPublished() {
		EligibilityRules rules = rules("international-junior", FEBRUARY);
		assertThat(rules.size()).isEqualTo(new EligibilityRules.Size(16, 16, 4, 20));
		assertThat(rules.ages().window()).isEqualTo(new EligibilityRules.Window(13, 18));
		assertThat(rules.ages().share()).isEqualTo(100);
	}

	/** 75 % with alternates, half others: Skate Canada rule 615. */
	@Test
	void theNationalExampleIsAsPublished() {
		EligibilityRules rules = rules("national-novice", FEBRUARY);
		assertThat(rules.ages().share()).isEqualTo(75);
		assertThat(rules.ages().alternatesCount()).isTrue();
		assertThat(rules.ages().others().oldest()).isEqualTo(15);
		assertThat(rules.sharing()).isEqualTo(new EligibilityRules.Sharing(true, 50));
		assertThat(rules.size().mostAlternates()).isEqualTo(4);
	}

	@Test
	void agesAreCountedOnTheLastSuchDayBeforeTheCompetition() {
		assertThat(rules("adult", FEBRUARY).ages().cutOff()).isEqualTo(LocalDate.of(2026, 6, 30));
		assertThat(rules("adult", LocalDate.of(2027, 6, 30)).ages().cutOff()).isEqualTo(LocalDate.of(2027, 6, 30));
		assertThat(rules("adult", LocalDate.of(2027, 6, 29)).ages().cutOff()).isEqualTo(LocalDate.of(2026, 6, 30));
		assertThat(rules("mixed-age", FEBRUARY).ages().areAsked()).isFalse();
	}

	private EligibilityRules rules(String set, LocalDate firstDay) {
		return this.sets.set(set).orElseThrow().rules(firstDay);
	}

}
