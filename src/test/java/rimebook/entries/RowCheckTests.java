package rimebook.entries;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.competition.CompetitionId;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class RowCheckTests {

	private static final EventView JUNIOR = event("Junior", 1);

	private static final EventView ADULT = event("Adult", 2);

	private static final ClubView BEACON = new ClubView(new ClubView.Id(UUID.randomUUID()), "Beacon SC", "Skerrywick");

	private final RowCheck check = new RowCheck(List.of(ADULT, JUNIOR),
			new KnownTeams(List.of(BEACON), List.of(team("Lanterns"), team("Embers"))),
			List.of(entry("Lanterns", EntryState.ENTERED), entry("Embers", EntryState.WITHDRAWN)), Map.of());

	@Test
	void findsNothingWrongWithAGoodRow() {
		assertThat(check(row("junior", "BEACON  club", "skerrywick", "Foghorns")))
			.isEqualTo(row("junior", "Beacon SC", "Skerrywick", "Foghorns"));
	}

	@Test
	void letsAWithdrawnTeamComeBack() {
		assertThat(check(row("Junior", "Beacon SC", "Skerrywick", "Embers")).isGood()).isTrue();
	}

	@Test
	void listsTheEventsWhereThereIsNoneOfThatName() {
		assertThat(check(row("Senior", "A", "B", "C")).problems()).singleElement()
			.hasToString(new EntryImport.Problem("event", Sentence.said("There is no event 'Senior'."),
					Sentence.said("One of: Junior, Adult."))
				.toString());
	}

	@Test
	void saysThatATeamIsEnteredAlready() {
		assertThat(check(row("Junior", "Beacon SC", "Skerrywick", "LANTERNS")).problems()).singleElement()
			.satisfies(
					(problem) -> assertThat(problem.wrong()).asString().contains("on the list of the event already"));
	}

	@Test
	void saysInWhichLineATeamStandsTwice() {
		check(row("Junior", "Beacon SC", "Skerrywick", "Foghorns"));
		assertThat(check(row("Junior", "Beacon SC", "Skerrywick", "Foghorns")).problems()).singleElement()
			.satisfies((problem) -> assertThat(problem.wrong()).asString().contains("in line 2"));
		assertThat(check(row("Adult", "Beacon SC", "Skerrywick", "Foghorns")).isGood()).isTrue();
	}

	@Test
	void wantsOneTownForAClub() {
		assertThat(check(row("Junior", "Beacon SC", "Elsewhere", "X")).problems()).singleElement()
			.satisfies((problem) -> assertThat(problem.expected()).asString().contains("Skerrywick"));
		check(row("Junior", "New SC", "Here", "X"));
		assertThat(check(row("Junior", "New SC", "There", "Y")).problems()).extracting(EntryImport.Problem::column)
			.containsExactly("town");
	}

	@ParameterizedTest
	@CsvSource({ "'',T,A,club", "C,'',A,town", "C,T,'',team", "=1+1,T,A,club", "C,@T,A,town" })
	void namesTheColumnAtFault(String club, String town, String team, String column) {
		assertThat(check(row("Junior", club, town, team)).problems()).extracting(EntryImport.Problem::column)
			.containsExactly(column);
	}

	@Test
	void refusesNamesThatAreTooLongOrOfSeveralLines() {
		EntryImport.Row bad = new EntryImport.Row(2, "Junior",
				new EntryImport.Row.Names("C".repeat(121), "T", "two\nlines", "s".repeat(121)), List.of());
		assertThat(check(bad).problems()).extracting(EntryImport.Problem::column)
			.containsExactly("club", "team", "spoken_as");
	}

	@Test
	void givesTheReasonWhyAnEventIsShut() {
		RowCheck shut = new RowCheck(List.of(JUNIOR), new KnownTeams(List.of(), List.of()), List.of(),
				Map.of(JUNIOR.id(), Sentence.said("Drawn already.")));
		assertThat(shut.check(row("Junior", "C", "T", "A"), false).problems())
			.extracting((problem) -> problem.wrong().english())
			.containsExactly("Drawn already.");
	}

	@ParameterizedTest
	@CsvSource({ "BEACON Skating Club,Lanterns", "S.C. Beacon,lan terns", "beacon,Lantern-s" })
	void knowsClubsAndTeamsAgainWhateverTheirForm(String club, String team) {
		assertThat(check(row("Junior", club, "Skerry-Wick", team)).problems())
			.extracting((problem) -> problem.wrong().english())
			.containsExactly("The team '" + team + "' is on the list of the event already.");
		assertThat(check(row("Junior", club, "Ebbhaven", "X")).problems()).extracting(EntryImport.Problem::column)
			.containsExactly("town");
	}

	@Test
	void knowsOneTeamOfTheFileAgain() {
		assertThat(check(row("Junior", "North Quay SC", "Ebbhaven", "Tarn's Echo")).isGood()).isTrue();
		assertThat(check(row("Junior", "North Quay", "Ebbhaven", "Tarns Echo")).problems())
			.extracting((problem) -> problem.wrong().english())
			.containsExactly("The team 'Tarns Echo' is in line 2.");
	}

	@Test
	void asksAboutALikelySlipUntilThePersonSaysThatItIsAnother() {
		EntryImport.Row club = row("Junior", "Becon", "Skerrywick", "Foghorns");
		assertThat(check(club)).satisfies((asked) -> {
			assertThat(asked.isAsked()).isTrue();
			assertThat(asked.problems()).singleElement()
				.hasToString(
						new EntryImport.Problem("club", Sentence.said("'Becon' is nearly 'Beacon SC', which is known."),
								Sentence.said("Write 'Beacon SC', or say that it is another one."), true)
							.toString());
		});
		assertThat(this.check.check(club, true).isGood()).isTrue();
		assertThat(check(row("Adult", "Becon", "Skerrywick", "Foghorns")).isGood()).isTrue();
		assertThat(check(row("Junior", "Beacon", "Skerrywick", "Lantrens")).problems())
			.extracting(EntryImport.Problem::column)
			.containsExactly("team");
		assertThat(check(row("Junior", "Becon", "Skerrywick", "Lantrens")).isGood()).isTrue();
	}

	@Test
	void aQuestionDoesNotHideWhatIsWrong() {
		EntryImport.Row row = check(row("Junior", "Becon", "Skerrywick", ""));
		assertThat(row.isGood()).isFalse();
		assertThat(row.isAsked()).isFalse();
		assertThat(this.check.check(row, true).isGood()).isFalse();
	}

	private EntryImport.Row check(EntryImport.Row row) {
		return this.check.check(row, false);
	}

	private static TeamView team(String name) {
		return new TeamView(new TeamView.Id(UUID.randomUUID()), name, BEACON, "");
	}

	private static EntryImport.Row row(String event, String club, String town, String team) {
		return new EntryImport.Row(2, event, new EntryImport.Row.Names(club, town, team, ""), List.of());
	}

	private static EntryView entry(String team, EntryState state) {
		return new EntryView(new EntryId(UUID.randomUUID()), JUNIOR.id(), team(team),
				new EntryView.Acceptance(Instant.EPOCH, ""),
				(state == EntryState.WITHDRAWN) ? new EntryView.Withdrawal(Instant.EPOCH, "") : null, 0);
	}

	private static EventView event(String name, int position) {
		return new EventView(new EventId(UUID.randomUUID()),
				new EventView.Listing(new CompetitionId(UUID.randomUUID()), position, name, name),
				DraftEvent.Judging.by(JudgingMethod.MAJORITY, 5), List.of(), null, 0);
	}

}
