package rimebook.rosters.eligibility;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class EligibilityTests {

	private static final LocalDate DAY = LocalDate.of(2026, 6, 30);

	/** Full years; who was born on 29 February has it on 1 March in other years: ours. */
	@ParameterizedTest
	@CsvSource({ "2013-06-30, 2026-06-30, 13", "2013-07-01, 2026-06-30, 12", "2012-02-29, 2026-02-28, 13",
			"2012-02-29, 2026-03-01, 14", "2012-02-29, 2028-02-28, 15", "2012-02-29, 2028-02-29, 16",
			"2026-06-30, 2026-06-30, 0", "2026-07-01, 2026-06-30, -1" })
	void ageIsCountedInFullYears(LocalDate born, LocalDate day, int age) {
		assertThat(Eligibility.age(born, day)).isEqualTo(age);
	}

	/**
	 * Junior is "at least 13 and not yet 19 before 1 July": ISU Rule 108 as quoted for
	 * singles at goldenskate.com, thread 98128.
	 */
	@ParameterizedTest
	@CsvSource({ "2013-06-30, true", "2013-07-01, false", "2007-07-01, true", "2007-06-30, false" })
	void juniorIsFromThirteenToEighteen(LocalDate born, boolean fits) {
		List<Finding> findings = findings(ages(13, 18, null, 100), team(born));
		assertThat(findings.isEmpty()).isEqualTo(fits);
	}

	@Test
	void aFindingNamesRuleAndPerson() {
		assertThat(findings(ages(13, 18, null, 100), team(LocalDate.of(2013, 7, 1)))).singleElement()
			.satisfies((finding) -> {
				assertThat(finding.isAbout(Rule.AGE, "1")).isTrue();
				assertThat(finding.sentence().english())
					.isEqualTo("Age: Skater 1 is 12 on 30 June 2026; 13 to 18 is asked.");
			});
	}

	@Test
	void whoseBirthDateIsNotKnownIsNamed() {
		assertThat(findings(ages(13, 18, null, 100), new Team("Icefern", List.of(member(1, false, null)))))
			.singleElement()
			.satisfies((finding) -> assertThat(finding.sentence().english())
				.isEqualTo("Birth date: that of Skater 1 is not known."));
	}

	/**
	 * 75 % of the team: Skate Canada rule 615. A part of a person counts as one: ours.
	 */
	@ParameterizedTest
	@CsvSource({ "16, 12, true", "16, 11, false", "15, 12, true", "15, 11, false", "13, 10, true", "13, 9, false",
			"20, 15, true", "20, 14, false" })
	void threeQuartersOfTheTeamHaveToBeInside(int size, int inside, boolean fits) {
		Team team = team(size, inside, LocalDate.of(2012, 1, 1), LocalDate.of(2010, 1, 1));
		List<Finding> findings = findings(ages(null, 14, null, 75), team);
		assertThat(findings.stream().map(Finding::rule).toList()).isEqualTo(fits ? List.of() : List.of(Rule.AGE_SHARE));
	}

	@Test
	void aShareThatIsMissedIsToldInFigures() {
		Team team = team(13, 9, LocalDate.of(2012, 1, 1), LocalDate.of(2010, 1, 1));
		assertThat(findings(ages(null, 14, null, 75), team)).singleElement()
			.satisfies((finding) -> assertThat(finding.sentence().english())
				.isEqualTo("Share of an age: 9 of 13 are 14 or less on 30 June 2026; at least 10 have to be (75 %)."));
	}

	/** A quarter of the team may be up to 15: Skate Ontario 2021, on 2021-22. */
	@Test
	void thoseOutsideTheShareHaveBoundsOfTheirOwn() {
		EligibilityRules rules = ages(null, 14, 15, 75);
		assertThat(findings(rules, team(16, 12, LocalDate.of(2012, 1, 1), LocalDate.of(2010, 7, 1)))).isEmpty();
		assertThat(findings(rules, team(16, 12, LocalDate.of(2012, 1, 1), LocalDate.of(2010, 6, 30)))).hasSize(4)
			.allSatisfy((finding) -> assertThat(finding.rule()).isEqualTo(Rule.AGE));
	}

	/** Skate Canada rule 615 counts alternates; other rules need not. */
	@Test
	void alternatesCountWhereTheRuleSaysSo() {
		List<Team.Member> members = new ArrayList<>(
				team(16, 12, LocalDate.of(2012, 1, 1), LocalDate.of(2010, 1, 1)).members());
		members.add(member(17, true, LocalDate.of(2010, 1, 1)));
		Team team = new Team("Icefern", members);
		EligibilityRules with = ages(null, 14, null, 75);
		EligibilityRules.Ages ages = with.ages();
		EligibilityRules without = new EligibilityRules(with.size(),
				new EligibilityRules.Ages(ages.window(), ages.others(), ages.cutOff(), ages.share(), false),
				with.sharing(), false);
		assertThat(findings(with, team)).extracting(Finding::rule).containsExactly(Rule.AGE_SHARE);
		assertThat(findings(without, team)).isEmpty();
	}

	/** Who may still turn out to be inside is not held against the team. */
	@Test
	void unknownBirthDatesDoNotMissTheShare() {
		List<Team.Member> members = new ArrayList<>(team(12, 12, LocalDate.of(2012, 1, 1), DAY).members());
		IntStream.rangeClosed(13, 16).forEach((i) -> members.add(member(i, false, null)));
		assertThat(findings(ages(null, 14, null, 75), new Team("Icefern", members))).extracting(Finding::rule)
			.containsOnly(Rule.BIRTH_DATE);
	}

	/** 16 on the ice, 4 alternates, 20 in all: ISU Media Guide 2019/20. */
	@ParameterizedTest
	@CsvSource({ "16, 4, ''", "16, 0, ''", "15, 4, LEAST_ON_ICE", "17, 3, MOST_ON_ICE",
			"16, 5, ALTERNATES ROSTER_LIMIT", "0, 0, LEAST_ON_ICE" })
	void aTeamIsSixteenAndFour(int onIce, int alternates, String broken) {
		EligibilityRules rules = new EligibilityRules(new EligibilityRules.Size(16, 16, 4, 20),
				EligibilityRules.NONE.ages(), EligibilityRules.NONE.sharing(), false);
		List<Team.Member> members = IntStream.rangeClosed(1, onIce + alternates)
			.mapToObj((i) -> member(i, i > onIce, null))
			.toList();
		assertThat(String.join(" ",
				findings(rules, new Team("Icefern", members)).stream().map((one) -> one.rule().name()).toList()))
			.isEqualTo(broken);
	}

	/** Skate Canada rule 615: only for one team in the same event. */
	@Test
	void nobodySkatesInTwoTeamsOfAnEvent() {
		EligibilityRules rules = new EligibilityRules(EligibilityRules.NONE.size(), EligibilityRules.NONE.ages(),
				new EligibilityRules.Sharing(true, null), false);
		Team other = new Team("Moonwake", List.of(member(2, true, null), member(3, false, null)));
		Team team = new Team("Icefern", List.of(member(1, false, null), member(2, false, null)));
		assertThat(Eligibility.findings(rules, team, new Neighbours(List.of(other), List.of()))).singleElement()
			.satisfies((finding) -> assertThat(finding.sentence().english())
				.isEqualTo("One team of the event: Skater 2 is on the roster of Moonwake, too, in the same event."));
		assertThat(Eligibility.findings(rules, team, Neighbours.NONE)).isEmpty();
	}

	/** Half of a club's second team have to be others: Skate Canada rule 615. */
	@ParameterizedTest
	@CsvSource({ "16, 8, true", "16, 9, false", "15, 7, true", "15, 8, false" })
	void halfOfAFurtherTeamAreOthers(int size, int shared, boolean fits) {
		EligibilityRules rules = new EligibilityRules(EligibilityRules.NONE.size(), EligibilityRules.NONE.ages(),
				new EligibilityRules.Sharing(false, 50), false);
		Team first = team(16, 16, DAY, DAY);
		List<Team.Member> members = IntStream.range(0, size)
			.mapToObj((i) -> member((i < shared) ? i + 1 : i + 101, false, null))
			.toList();
		assertThat(
				Eligibility.findings(rules, new Team("Icefern Two", members), new Neighbours(List.of(), List.of(first)))
					.isEmpty())
			.isEqualTo(fits);
	}

	@Test
	void numbersAndTwinsAreLookedAt() {
		EligibilityRules rules = new EligibilityRules(EligibilityRules.NONE.size(), EligibilityRules.NONE.ages(),
				EligibilityRules.NONE.sharing(), true);
		Team team = new Team("Icefern", List.of(new Team.Member("1", "Aila Rime", false, DAY, "17"),
				new Team.Member("2", "aila rime", false, DAY, "18"), new Team.Member("3", "Bo Firn", false, DAY, " ")));
		assertThat(findings(rules, team)).extracting((finding) -> finding.sentence().english())
			.containsExactly("One person once: aila rime is on the roster twice, with the same name and birth date.",
					"Membership number: Bo Firn has none.");
	}

	@Test
	void nothingIsAskedWhereNothingWasSet() {
		assertThat(findings(EligibilityRules.NONE, new Team("Icefern", List.of()))).isEmpty();
	}

	private static List<Finding> findings(EligibilityRules rules, Team team) {
		return Eligibility.findings(rules, team, Neighbours.NONE);
	}

	private static EligibilityRules ages(@Nullable Integer youngest, @Nullable Integer oldest,
			@Nullable Integer othersOldest, int share) {
		return new EligibilityRules(EligibilityRules.NONE.size(),
				new EligibilityRules.Ages(new EligibilityRules.Window(youngest, oldest),
						new EligibilityRules.Window(null, othersOldest), DAY, share, true),
				EligibilityRules.NONE.sharing(), false);
	}

	private static Team team(LocalDate born) {
		return team(1, 1, born, born);
	}

	private static Team team(int size, int first, LocalDate firstBorn, LocalDate othersBorn) {
		return new Team("Icefern",
				IntStream.rangeClosed(1, size)
					.mapToObj((i) -> member(i, false, (i <= first) ? firstBorn : othersBorn))
					.toList());
	}

	private static Team.Member member(int number, boolean alternate, @Nullable LocalDate born) {
		return new Team.Member(String.valueOf(number), "Skater " + number, alternate, born, "");
	}

}
