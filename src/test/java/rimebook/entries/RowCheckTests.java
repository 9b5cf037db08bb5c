package rimebook.entries;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.competition.CompetitionId;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingPolicies;

class RowCheckTests {

	private static final EventView JUNIOR = event("Junior", 1);

	private static final EventView ADULT = event("Adult", 2);

	private static final ClubView BEACON = new ClubView(new ClubId(UUID.randomUUID()), "Beacon SC", "Skerrywick");

	private final RowCheck check = new RowCheck(List.of(ADULT, JUNIOR), List.of(BEACON),
			List.of(entry("Lanterns", EntryState.ENTERED), entry("Embers", EntryState.WITHDRAWN)), Map.of());

	@Test
	void findsNothingWrongWithAGoodRow() {
		assertThat(this.check.check(row("junior", "BEACON SC", "skerrywick", "Foghorns")).isGood()).isTrue();
	}

	@Test
	void letsAWithdrawnTeamComeBack() {
		assertThat(this.check.check(row("Junior", "Beacon SC", "Skerrywick", "Embers")).isGood()).isTrue();
	}

	@Test
	void listsTheEventsWhereThereIsNoneOfThatName() {
		assertThat(this.check.check(row("Senior", "A", "B", "C")).problems())
			.containsExactly(new RowProblem("event", "There is no event 'Senior'.", "One of: Junior, Adult."));
	}

	@Test
	void saysThatATeamIsEnteredAlready() {
		assertThat(this.check.check(row("Junior", "Beacon SC", "Skerrywick", "LANTERNS")).problems()).singleElement()
			.satisfies((problem) -> assertThat(problem.wrong()).contains("on the list of the event already"));
	}

	@Test
	void saysInWhichLineATeamStandsTwice() {
		this.check.check(row("Junior", "Beacon SC", "Skerrywick", "Foghorns"));
		assertThat(this.check.check(row("Junior", "Beacon SC", "Skerrywick", "Foghorns")).problems()).singleElement()
			.satisfies((problem) -> assertThat(problem.wrong()).contains("in line 2"));
		assertThat(this.check.check(row("Adult", "Beacon SC", "Skerrywick", "Foghorns")).isGood()).isTrue();
	}

	@Test
	void wantsOneTownForAClub() {
		assertThat(this.check.check(row("Junior", "Beacon SC", "Elsewhere", "X")).problems()).singleElement()
			.satisfies((problem) -> assertThat(problem.expected()).contains("Skerrywick"));
		this.check.check(row("Junior", "New SC", "Here", "X"));
		assertThat(this.check.check(row("Junior", "New SC", "There", "Y")).problems()).extracting(RowProblem::column)
			.containsExactly("town");
	}

	@ParameterizedTest
	@CsvSource({ "'',T,A,club", "C,'',A,town", "C,T,'',team", "=1+1,T,A,club", "C,@T,A,town" })
	void namesTheColumnAtFault(String club, String town, String team, String column) {
		assertThat(this.check.check(row("Junior", club, town, team)).problems()).extracting(RowProblem::column)
			.containsExactly(column);
	}

	@Test
	void refusesNamesThatAreTooLongOrOfSeveralLines() {
		ImportRow bad = new ImportRow(2, "Junior", "C".repeat(121), "T", "two\nlines", "s".repeat(121), List.of());
		assertThat(this.check.check(bad).problems()).extracting(RowProblem::column)
			.containsExactly("club", "team", "spoken_as");
	}

	@Test
	void givesTheReasonWhyAnEventIsShut() {
		RowCheck shut = new RowCheck(List.of(JUNIOR), List.of(), List.of(), Map.of(JUNIOR.id(), "Drawn already."));
		assertThat(shut.check(row("Junior", "C", "T", "A")).problems()).extracting(RowProblem::wrong)
			.containsExactly("Drawn already.");
	}

	private static ImportRow row(String event, String club, String town, String team) {
		return new ImportRow(2, event, club, town, team, "", List.of());
	}

	private static EntryView entry(String team, EntryState state) {
		return new EntryView(new EntryId(UUID.randomUUID()), JUNIOR.id(),
				new TeamView(new TeamId(UUID.randomUUID()), team, BEACON, ""), state, "", Instant.EPOCH, null, "", 0);
	}

	private static EventView event(String name, int position) {
		return new EventView(new EventId(UUID.randomUUID()), new CompetitionId(UUID.randomUUID()), position, name, name,
				JudgingMethod.MAJORITY, 5, "", JudgingPolicies.usual(), List.of(), 0);
	}

}
