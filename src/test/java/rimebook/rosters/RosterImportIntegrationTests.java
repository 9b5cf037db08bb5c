package rimebook.rosters;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.entries.EntryView;
import rimebook.rosters.eligibility.EligibilityRules;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Rosters from a file and to one. */
@WholeApplication
class RosterImportIntegrationTests {

	private static final Actor SECRETARY = SmallCompetition.SECRETARY;

	private static final String HEADER = "event,team,given_name,family_name,birth_date,membership_number,part\n";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RosterImport files;

	@Autowired
	private Rosters rosters;

	@Autowired
	private Skaters skaters;

	@Autowired
	private RecordVerification record;

	private SmallCompetition small;

	private CompetitionId id;

	/** So that nobody has the name of somebody of another test. */
	private String family;

	private StoredFindings stored;

	@BeforeEach
	void enterTwoTeams() {
		this.stored = StoredFindings.since(this.record);
		this.small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.id = this.small.competition().id();
		this.family = "Firn" + UUID.randomUUID().toString().replaceAll("[^a-f]", "");
	}

	@Test
	void whatIsExportedIsReadBackUnchanged() {
		apply(HEADER + row("Team 1", "Aila", "2012-02-29", "7", "skates")
				+ row("Team 1", "=Bo", "", "", "alternate").replace("=Bo", "Bo")
				+ row("Team 2", "Cela", "1.3.2011", "\"12,5\"", ""));
		String exported = this.files.export(this.id);
		assertThat(exported).contains("Junior,Team 1,Aila," + this.family + ",2012-02-29,7,skates,Club 1,Club 1");
		RosterImport.Outcome again = apply(exported);
		assertThat(again).isEqualTo(new RosterImport.Outcome(0, 0, 0, 0));
		assertThat(this.files.export(this.id)).isEqualTo(exported);
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void whoIsKnownIsShownAndKnownAgain() {
		EntryView entry = this.small.entries().get(0);
		SkaterView aila = this.skaters.add(
				new DraftSkater("Aila", this.family, LocalDate.of(2012, 2, 29), "", entry.team().club().id()),
				SECRETARY);
		String csv = HEADER + row("Team 1", "AILA", "2012-02-29", "77", "skates")
				+ row("Team 1", "Bo", "2011-01-01", "", "skates") + row("Team 2", "Bo", "2011-01-01", "", "skates");
		RosterImport.Preview preview = this.files.preview(this.id, csv, Set.of());
		assertThat(preview.bad()).isEmpty();
		assertThat(preview.good().stream().map((row) -> row.order().effect().english()))
			.containsExactly("known (Club 1), gets a membership number", "new", "the same person as in line 3");
		assertThat(this.rosters.of(entry.id()).places()).isEmpty();
		assertThat(apply(csv)).isEqualTo(new RosterImport.Outcome(1, 3, 1, 0));
		SkaterView now = this.skaters.skater(aila.id());
		assertThat(now.facts().membershipNumber()).isEqualTo("77");
		assertThat(now.facts().givenName()).isEqualTo("Aila");
		SkaterView bo = this.rosters.of(entry.id()).places().get(1).skater();
		assertThat(this.rosters.of(bo.id())).hasSize(2);
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void aNamesakeIsAskedAbout() {
		apply(HEADER + row("Team 1", "Aila", "2012-02-29", "", "skates"));
		String csv = HEADER + row("Team 1", "Aila", "2010-05-05", "", "skates");
		RosterImport.Preview asked = this.files.preview(this.id, csv, Set.of());
		assertThat(asked.bad()).singleElement().satisfies((row) -> {
			assertThat(row.line()).isEqualTo(2);
			assertThat(row.isAsked()).isTrue();
		});
		refused("import-rows-bad", csv, RosterImport.Answers.NONE);
		refused("import-nothing", csv, new RosterImport.Answers(Set.of(2), Set.of()));
		assertThat(this.files.apply(this.id, csv, new RosterImport.Answers(Set.of(), Set.of(2)), (done) -> {
		}, SECRETARY).people()).isEqualTo(1);
	}

	@Test
	void whatIsWrongIsToldByLineAndColumn() {
		String csv = HEADER + row("Team 9", "Aila", "2012-02-29", "", "skates")
				+ row("Team 1", "Bo", "29/02/2012", "", "captain") + row("Team 1", "", "2012-01-01", "", "")
				+ "Senior,Team 1,Cela,Thaw\n" + row("Team 1", "Dua", "2012-01-01", "", "")
				+ row("Team 1", "Dua", "2012-01-01", "", "");
		List<String> told = new ArrayList<>();
		this.files.preview(this.id, csv, Set.of())
			.bad()
			.forEach((row) -> row.problems()
				.forEach((problem) -> told.add(row.line() + " " + problem.column() + ": " + problem.wrong().english()
						+ " " + problem.expected().english())));
		assertThat(told).contains(
				"2 team: No team 'Team 9' takes part in Junior. A team that is entered in that event.",
				"3 part: 'captain' is no part on a roster. skates or alternate.",
				"3 birth_date: '29/02/2012' is no day on which somebody can be born. A day such as 2012-02-29 or 29.2.2012.",
				"4 given_name: The field 'givenName' is empty; please fill it in. One line of plain text that is not too long.",
				"5 event: There is no event 'Senior'. One of: Junior.", "7 row: Dua " + this.family
						+ " is on the roster of Team 1 in a row before. Each person once on a roster.");
		refused("import-rows-bad", csv, RosterImport.Answers.NONE);
		assertThat(this.rosters.of(this.small.entries().get(0).id()).places()).isEmpty();
	}

	@Test
	void afterTheStartNoFileIsTaken() {
		this.small.move(CompetitionState.ENTRIES_CLOSED);
		this.small.move(CompetitionState.RUNNING);
		refused("import-rows-bad", HEADER + row("Team 1", "Aila", "2012-02-29", "", "skates"),
				RosterImport.Answers.NONE);
	}

	/**
	 * Twenty seconds are asked for on an idle machine; a test run is none. All have one
	 * birth date, so that whoever compares each with each other is found out.
	 */
	@Test
	void threeThousandSkatersAreWrittenWhileAPageTellsHowFar() {
		SmallCompetition large = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 60,
				CompetitionFixtures.anEvent("Junior", 3));
		String csv = HEADER + IntStream.range(0, 3000)
			.mapToObj((i) -> row("Team " + (1 + i / 50), letters(i), "2012-01-01", "", ""))
			.collect(Collectors.joining());
		long began = System.nanoTime();
		List<Integer> told = new ArrayList<>();
		RosterImport.Outcome outcome = this.files.apply(large.competition().id(), csv, RosterImport.Answers.NONE,
				told::add, SECRETARY);
		long seconds = (System.nanoTime() - began) / 1_000_000_000;
		System.out.println("3,000 skaters written in " + seconds + " s");
		assertThat(outcome).isEqualTo(new RosterImport.Outcome(3000, 3000, 0, 0));
		assertThat(told).isSorted().hasSizeGreaterThan(20).endsWith(3000);
		assertThat(seconds).isLessThan(60);
		EligibilityRules rules = this.context.getBean(EligibilitySets.class)
			.set("national-novice")
			.orElseThrow()
			.rules(large.competition().facts().firstDay());
		this.context.getBean(EventEligibility.class)
			.set(new EventEligibility.SetRules(large.event().id(), "", rules, "", null, -1), SECRETARY);
		long quickest = IntStream.range(0, 5).mapToLong((i) -> checked(large.competition().id())).min().orElseThrow();
		System.out.println("60 teams of 50 looked at in " + quickest + " ms");
		assertThat(quickest).isLessThan(3000);
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		long page = IntStream.range(0, 5)
			.mapToLong((i) -> opened(secretary, "/desk/rosters/" + large.competition().id()))
			.min()
			.orElseThrow();
		System.out.println("their page answered in " + page + " ms");
		assertThat(page).isLessThan(3000);
	}

	private static long opened(Visitor visitor, String path) {
		long began = System.nanoTime();
		assertThat(visitor.bytes(path).statusCode()).isEqualTo(200);
		return (System.nanoTime() - began) / 1_000_000;
	}

	private long checked(CompetitionId competition) {
		long began = System.nanoTime();
		assertThat(this.context.getBean(RosterCheck.class).of(competition)).hasSize(60)
			.allSatisfy((team) -> assertThat(team.missing()).isNotEmpty());
		return (System.nanoTime() - began) / 1_000_000;
	}

	private static String letters(int number) {
		return "S" + Integer.toString(number + 1000, 26)
			.chars()
			.mapToObj((digit) -> String.valueOf((char) ('a' + Character.digit(digit, 26))))
			.collect(Collectors.joining());
	}

	private String row(String team, String given, String born, String number, String part) {
		return String.join(",", "Junior", team, given, this.family, born, number, part) + "\n";
	}

	private RosterImport.Outcome apply(String csv) {
		return this.files.apply(this.id, csv, RosterImport.Answers.NONE, (done) -> {
		}, SECRETARY);
	}

	private void refused(String code, String csv, RosterImport.Answers answers) {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.files.apply(this.id, csv, answers, (done) -> {
			}, SECRETARY))
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
