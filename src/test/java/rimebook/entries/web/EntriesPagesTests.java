package rimebook.entries.web;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftCompetition;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.entries.ClubView;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryImport;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;
import rimebook.entries.SlipCheck;
import rimebook.entries.TeamView;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.web.PageTest;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.BDDMockito.willThrow;
import static org.mockito.Mockito.never;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

@PageTest({ EntriesController.class, WithdrawalController.class, ImportController.class })
@WithMockUser(username = "ada", roles = "SECRETARY")
class EntriesPagesTests {

	private static final CompetitionId COMPETITION = new CompetitionId(UUID.randomUUID());

	private static final EventId EVENT = new EventId(UUID.randomUUID());

	private static final EntryId ENTRY = new EntryId(UUID.randomUUID());

	private static final String LIST = "/desk/entries/" + EVENT;

	private static final String WITHDRAW = "/desk/entries/entry/" + ENTRY + "/withdraw";

	private static final String IMPORT = "/desk/entries/import/" + COMPETITION;

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private Competitions competitions;

	@MockitoBean
	private Entries entries;

	@MockitoBean
	private EntryImport entryImport;

	@MockitoBean
	private SlipCheck slips;

	@BeforeEach
	void oneEvent() {
		inState(CompetitionState.ENTRIES_OPEN);
		given(this.competitions.event(EVENT)).willReturn(event());
		given(this.competitions.events(COMPETITION)).willReturn(List.of(event()));
		given(this.entries.ofEvent(EVENT)).willReturn(
				List.of(entry("Lanterns", EntryState.ENTERED, ""), entry("Embers", EntryState.WITHDRAWN, "Flu")));
		given(this.entries.entry(ENTRY)).willReturn(entry("Lanterns", EntryState.ENTERED, ""));
		given(this.entries.refusal(EVENT)).willReturn(Optional.empty());
		given(this.entries.clubs()).willReturn(List.of(club()));
	}

	@Test
	void countsTheTeamsOfEachEvent() {
		given(this.competitions.all()).willReturn(List.of(competition(CompetitionState.ENTRIES_OPEN)));
		assertThat(this.mvc.get().uri("/desk/entries")).hasStatusOk().bodyText().contains("Junior", "1 team", IMPORT);
	}

	@Test
	void listsTeamsWithTheirState() {
		assertThat(this.mvc.get().uri(LIST)).hasStatusOk()
			.bodyText()
			.contains("Lanterns", "entered", "withdrawn", "6 January, 09:00: Flu", WITHDRAW,
					"<option value=\"Beacon SC\">", "<option value=\"Skerrywick\">")
			.doesNotContain("name=\"lateReason\"");
	}

	@Test
	void findsTeams() {
		assertThat(this.mvc.get().uri(LIST + "?q=EMB")).bodyText().contains("Embers").doesNotContain("Lanterns");
		assertThat(this.mvc.get().uri(LIST + "?q=<b>")).bodyText().contains("holds “&lt;b&gt;”");
	}

	@Test
	void saysThatThereIsNoTeam() {
		given(this.entries.ofEvent(EVENT)).willReturn(List.of());
		assertThat(this.mvc.get().uri(LIST)).bodyText().contains("No team has been entered yet.", "no team");
	}

	@Test
	@WithMockUser(roles = "REFEREE")
	void offersNoChangeToReaders() {
		assertThat(this.mvc.get().uri(LIST)).hasStatusOk()
			.bodyText()
			.contains("Lanterns")
			.doesNotContain("name=\"team\"", "/withdraw");
	}

	@Test
	void saysWhyNobodyCanBeEntered() {
		given(this.entries.refusal(EVENT)).willReturn(Optional.of(Sentence.said("The first segment has been drawn.")));
		assertThat(this.mvc.get().uri(LIST)).bodyText()
			.contains("The first segment has been drawn.")
			.doesNotContain("name=\"team\"");
	}

	@Test
	void asksForAReasonOnceEntriesAreClosed() {
		inState(CompetitionState.ENTRIES_CLOSED);
		assertThat(this.mvc.get().uri(LIST)).bodyText().contains("name=\"lateReason\"");
	}

	@Test
	void entersATeam() {
		assertThat(this.mvc.post()
			.uri(LIST)
			.with(csrf())
			.param("team", "Lanterns")
			.param("club", "Beacon SC")
			.param("town", "Skerrywick")
			.param("spokenAs", "LAN-terns")).hasRedirectedUrl(LIST);
		then(this.entries).should()
			.enter(eq(new EnterTeam(EVENT, "Beacon SC", "Skerrywick", "Lanterns", "LAN-terns", "")), any());
	}

	@Test
	void keepsWhatWasTypedAndSaysWhatIsWrong() {
		assertThat(this.mvc.post()
			.uri(LIST)
			.with(csrf())
			.param("team", "T".repeat(121))
			.param("club", "Beacon SC")
			.param("town", " ")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("at most 120 characters fit", "Please name the town the club is from.", "value=\"Beacon SC\"");
		then(this.entries).should(never()).enter(any(), any());
	}

	@Test
	void showsTheConflictBesideTheTeam() {
		given(this.entries.enter(any(), any())).willThrow(new ConflictException("already-entered", "team",
				Sentence.said("Lanterns is entered in this event already.")));
		assertThat(this.mvc.post()
			.uri(LIST)
			.with(csrf())
			.param("team", "Lanterns")
			.param("club", "Beacon SC")
			.param("town", "Skerrywick")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("Lanterns is entered in this event already.", "team-fault");
	}

	@Test
	void asksAboutANameThatMayBeASlip() {
		willThrow(new RuleViolationException("name-near", "club",
				Sentence.said("'Becon' is nearly 'Beacon SC', which is known.")))
			.given(this.slips)
			.check(any());
		assertThat(enter("Becon")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("&#39;Becon&#39; is nearly &#39;Beacon SC&#39;, which is known.", "club-fault",
					"name=\"another\"");
		then(this.entries).should(never()).enter(any(), any());
		assertThat(enter("Becon", "another")).hasRedirectedUrl(LIST);
		then(this.entries).should().enter(eq(new EnterTeam(EVENT, "Becon", "Skerrywick", "Embers", "", "")), any());
	}

	private MockMvcTester.MockMvcRequestBuilder enter(String club, String... ticked) {
		MockMvcTester.MockMvcRequestBuilder form = this.mvc.post()
			.uri(LIST)
			.with(csrf())
			.param("team", "Embers")
			.param("club", club)
			.param("town", "Skerrywick");
		Stream.of(ticked).forEach((box) -> form.param(box, "true"));
		return form;
	}

	@Test
	void asksAboutRowsThatMayBeSlips() {
		EntryImport.Row asked = new EntryImport.Row(4, "Junior",
				new EntryImport.Row.Names("Becon", "Skerrywick", "Foghorns", ""),
				List.of(new EntryImport.Problem("club", Sentence.said("'Becon' is nearly 'Beacon SC'."),
						Sentence.said("Write 'Beacon SC'."), true)));
		given(this.entryImport.apply(any(), any(), any(), any())).willThrow(new RuleViolationException(
				"import-rows-bad", "csv", Sentence.said("Mend these lines or set them aside: 4.")));
		given(this.entryImport.preview(COMPETITION, "pasted", Set.of(3)))
			.willReturn(new EntryImport.Preview(List.of(asked), List.of()));
		assertThat(this.mvc.post().uri(IMPORT + "/accept").with(csrf()).param("csv", "pasted").param("another", "3"))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("type=\"hidden\" name=\"another\" value=\"3\"", "type=\"checkbox\" name=\"another\" value=\"4\"");
		then(this.entryImport).should()
			.apply(eq(COMPETITION), eq("pasted"), eq(new EntryImport.Answers(Set.of(), Set.of(3))), any());
	}

	@Test
	void withdrawsATeamWithAReason() {
		assertThat(this.mvc.get().uri(WITHDRAW)).hasStatusOk().bodyText().contains("Withdraw Lanterns");
		assertThat(this.mvc.post().uri(WITHDRAW).with(csrf()).param("version", "4").param("reason", "Flu"))
			.hasRedirectedUrl(LIST);
		then(this.entries).should().withdraw(eq(ENTRY), eq(4), eq("Flu"), any());
	}

	@Test
	void withdrawsNobodyWithoutAReason() {
		assertThat(this.mvc.post().uri(WITHDRAW).with(csrf()).param("version", "4").param("reason", " "))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("Please give the reason for the withdrawal.");
		then(this.entries).should(never()).withdraw(any(), anyInt(), any(), any());
	}

	@Test
	void looksAFileOverRowByRow() {
		given(this.entryImport.preview(COMPETITION, "pasted", Set.of())).willReturn(preview());
		assertThat(this.mvc.get().uri(IMPORT)).hasStatusOk();
		assertThat(this.mvc.post().uri(IMPORT).multipart().with(csrf()).param("csv", "pasted")).hasStatusOk()
			.bodyText()
			.contains("1 of 2 rows can be entered", "line 3", "event: There is no event &#39;Senior&#39;.",
					"One of: Junior.", "colour", "name=\"aside\" value=\"3\"");
		then(this.entryImport).should(never()).apply(any(), any(), any(), any());
	}

	@Test
	void takesAnUploadedFileFirst() {
		byte[] upload = "uploaded".getBytes(StandardCharsets.UTF_8);
		given(this.entryImport.textOf(upload)).willReturn("uploaded");
		given(this.entryImport.preview(COMPETITION, "uploaded", Set.of())).willReturn(preview());
		assertThat(this.mvc.post().uri(IMPORT).multipart().file("file", upload).with(csrf()).param("csv", "pasted"))
			.hasStatusOk()
			.bodyText()
			.contains("value=\"uploaded\"");
	}

	@Test
	void keepsTheTextOfAnUploadedFileThatIsRefused() {
		byte[] upload = "Level;Club".getBytes(StandardCharsets.UTF_8);
		given(this.entryImport.textOf(upload)).willReturn("Level;Club");
		given(this.entryImport.preview(COMPETITION, "Level;Club", Set.of()))
			.willThrow(new RuleViolationException("import-header", "csv", Sentence.said("The first line lacks town.")));
		assertThat(this.mvc.post().uri(IMPORT).multipart().file("file", upload).with(csrf()).param("csv", ""))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("The first line lacks town.", "Level;Club</textarea>");
	}

	@Test
	void saysWhyAFileCannotBeRead() {
		given(this.entryImport.preview(any(), any(), any()))
			.willThrow(new RuleViolationException("import-header", "csv", Sentence.said("Expected are commas.")));
		assertThat(this.mvc.post().uri(IMPORT).multipart().with(csrf()).param("csv", "event;club"))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("Expected are commas.", "event;club</textarea>");
	}

	@Test
	void entersWhatIsNotSetAside() {
		given(this.entryImport.apply(any(), any(), any(), any())).willReturn(new EntryImport.Outcome(1, 1));
		assertThat(accept("3")).hasRedirectedUrl("/desk/competitions/" + COMPETITION);
		then(this.entryImport).should()
			.apply(eq(COMPETITION), eq("pasted"), eq(new EntryImport.Answers(Set.of(3), Set.of())), any());
	}

	@Test
	void showsTheRowsAgainWhenTheyAreRefused() {
		given(this.entryImport.apply(any(), any(), any(), any())).willThrow(new RuleViolationException(
				"import-rows-bad", "csv", Sentence.said("Mend these lines or set them aside: 4.")));
		given(this.entryImport.preview(COMPETITION, "pasted", Set.of())).willReturn(preview());
		assertThat(accept("3")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("Mend these lines or set them aside: 4.", "name=\"aside\" value=\"3\" checked=\"checked\"",
					"name=\"csv\" value=\"pasted\"");
	}

	@Test
	void showsTheTextAgainWhenEntriesWereClosedMeanwhile() {
		ConflictException closed = new ConflictException("entries-not-open",
				Sentence.said("The competition is entries closed."));
		given(this.entryImport.apply(any(), any(), any(), any())).willThrow(closed);
		given(this.entryImport.preview(any(), any(), any())).willThrow(closed);
		assertThat(accept("nonsense")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("The competition is entries closed.", "pasted</textarea>");
	}

	@Test
	void savesTheEntriesAsAFile() {
		given(this.entryImport.export(COMPETITION)).willReturn("event,club,town,team,spoken_as\r\n");
		assertThat(this.mvc.get().uri("/desk/entries/export/" + COMPETITION)).hasStatusOk()
			.hasHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"frostlight-trophy-entries.csv\"")
			.hasBodyTextEqualTo("event,club,town,team,spoken_as\r\n");
	}

	private MockMvcTester.MockMvcRequestBuilder accept(String aside) {
		return this.mvc.post().uri(IMPORT + "/accept").with(csrf()).param("csv", "pasted").param("aside", aside);
	}

	private void inState(CompetitionState state) {
		given(this.competitions.competition(COMPETITION)).willReturn(competition(state));
	}

	private static EntryImport.Preview preview() {
		EntryImport.Row good = new EntryImport.Row(2, "Junior",
				new EntryImport.Row.Names("Beacon SC", "Skerrywick", "Lanterns", ""), List.of());
		EntryImport.Row bad = new EntryImport.Row(3, "Senior",
				new EntryImport.Row.Names("Beacon SC", "Skerrywick", "Embers", ""),
				List.of(new EntryImport.Problem("event", Sentence.said("There is no event 'Senior'."),
						Sentence.said("One of: Junior."))));
		return new EntryImport.Preview(List.of(good, bad), List.of("colour"));
	}

	private static EntryView entry(String team, EntryState state, String reason) {
		EntryView.Withdrawal gone = (state == EntryState.WITHDRAWN)
				? new EntryView.Withdrawal(Instant.parse("2027-01-06T07:00:00Z"), reason) : null;
		return new EntryView(ENTRY, EVENT, new TeamView(new TeamView.Id(UUID.randomUUID()), team, club(), ""),
				new EntryView.Acceptance(Instant.parse("2027-01-05T18:00:00Z"), ""), gone, 4);
	}

	private static ClubView club() {
		return new ClubView(new ClubView.Id(new UUID(0, 1)), "Beacon SC", "Skerrywick");
	}

	private static CompetitionView competition(CompetitionState state) {
		return new CompetitionView(
				COMPETITION, "frostlight-trophy", new DraftCompetition("Frostlight Trophy", "Skerrywick",
						ZoneId.of("Europe/Helsinki"), LocalDate.of(2027, 2, 13), LocalDate.of(2027, 2, 14), "Rulebook"),
				state, 3);
	}

	private static EventView event() {
		return new EventView(EVENT, new EventView.Listing(COMPETITION, 1, "junior", "Junior"),
				DraftEvent.Judging.by(JudgingMethod.MAJORITY, 7), List.of(), null, 5);
	}

}
