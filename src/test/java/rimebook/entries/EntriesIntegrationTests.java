package rimebook.entries;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.data.jpa.test.autoconfigure.DataJpaTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionModule;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Races;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.competition.CompetitionFixtures.SECRETARY;

/** Every act in a transaction of its own, as in the running service. */
@DataJpaTest(showSql = false)
@Transactional(propagation = Propagation.NOT_SUPPORTED)
@RecordApplicationEvents
@Import(EntriesIntegrationTests.Outside.class)
class EntriesIntegrationTests {

	private static final Instant NOW = Instant.parse("2027-01-05T18:00:00.123Z");

	@Autowired
	private Competitions competitions;

	@Autowired
	private Entries entries;

	@Autowired
	private Renaming renaming;

	@Autowired
	private EntryImport entryImport;

	@Autowired
	private SlipCheck slips;

	@Autowired
	private Veto veto;

	@Autowired
	private ApplicationEvents published;

	private CompetitionView competition;

	private EventView junior;

	private EventView adult;

	/** Clubs are shared by all competitions, so each test has its own. */
	private String club;

	@BeforeEach
	void openEntries() {
		this.competition = this.competitions.create(CompetitionFixtures.aCompetition("Frostlight Trophy"), SECRETARY);
		this.junior = this.competitions.addEvent(this.competition.id(), CompetitionFixtures.anEvent("Junior", 7),
				SECRETARY);
		this.adult = this.competitions.addEvent(this.competition.id(), CompetitionFixtures.anEvent("Adult", 5),
				SECRETARY);
		move(CompetitionState.ENTRIES_OPEN);
		this.club = "Beacon " + UUID.randomUUID();
	}

	@AfterEach
	void liftTheVeto() {
		this.veto.reason = "";
	}

	@Test
	void keepsAnEntryWithItsTeamAndClub() {
		EntryView entry = enter("Lanterns");
		assertThat(this.entries.entry(entry.id())).isEqualTo(entry);
		assertThat(this.entries.ofEvent(this.junior.id())).containsExactly(entry);
		assertThat(entry.team().club().town()).isEqualTo("Skerrywick");
		assertThat(entry.acceptance().enteredAt()).isEqualTo(NOW);
		assertThat(entry.isLate()).isFalse();
		assertThat(this.entries.clubs()).extracting(ClubView::name).contains(this.club);
	}

	@Test
	void listsTeamsByName() {
		enter("lanterns");
		enter("Embers");
		assertThat(this.entries.ofEvent(this.junior.id())).extracting((entry) -> entry.team().name())
			.containsExactly("Embers", "lanterns");
	}

	@Test
	void knowsATeamAgainInAnotherEvent() {
		EntryView first = enter("Lanterns");
		EntryView second = this.entries.enter(
				new EnterTeam(this.adult.id(), this.club.toUpperCase(), "SKERRYWICK", "LANTERNS", "", ""), SECRETARY);
		assertThat(second.team()).isEqualTo(first.team());
	}

	@Test
	void knowsAClubAndATeamAgainInWhateverForm() {
		EntryView first = enter("Tarn's Echo");
		EntryView second = this.entries.enter(new EnterTeam(this.adult.id(), "S.C. " + this.club.replace(" ", "  "),
				"skerry wick", "TARNS ECHO", "", ""), SECRETARY);
		assertThat(second.team()).isEqualTo(first.team());
		assertRefused(() -> this.entries.enter(
				new EnterTeam(this.adult.id(), this.club + " Skating Club", "Skerrywick", "Tarn\u2019s Echo", "", ""),
				SECRETARY), "already-entered");
		assertRefused(() -> this.entries
			.enter(new EnterTeam(this.junior.id(), this.club + " Skating Club", "Elsewhere", "X", "", ""), SECRETARY),
				"club-town");
	}

	@Test
	void asksAboutALikelySlipInTheNameOfAClubOrATeam() {
		enter("Lanterns");
		assertRefused(() -> asked("Beakon" + this.club.substring("Beacon".length()), "Lanterns"), "name-near");
		assertRefused(() -> asked(this.club + " SC", "Lantrens"), "name-near");
		assertThat(asked(this.club + " SC", "Lanterns").team()).isEqualTo("Lanterns");
		assertThat(asked(this.club, "Foghorns").team()).isEqualTo("Foghorns");
	}

	private EnterTeam asked(String club, String team) {
		EnterTeam order = new EnterTeam(this.junior.id(), club, "Skerrywick", team, "", "");
		this.slips.check(order);
		return order;
	}

	@Test
	void refusesTheSameTeamTwice() {
		enter("Lanterns");
		assertRefused(() -> enter("lanterns"), "already-entered");
		assertThat(this.entries.ofEvent(this.junior.id())).hasSize(1);
	}

	@Test
	void refusesAClubFromAnotherTown() {
		enter("Lanterns");
		assertRefused(() -> this.entries.enter(new EnterTeam(this.junior.id(), this.club, "Elsewhere", "X", "", ""),
				SECRETARY), "club-town");
	}

	@Test
	void aClubIsMendedOnceForAllItsTeamsAndOnRecord() {
		EntryView entry = enter("Lanterns");
		Renaming.KnownClub known = this.renaming.club(entry.team().club().id());
		assertThat(known.teams()).containsExactly("Lanterns");
		ClubView mended = this.renaming.change(change(known, this.club + "  mended", "Ebbhaven"), SECRETARY);
		assertThat(mended.name()).isEqualTo(this.club + " mended");
		assertThat(this.entries.entry(entry.id()).team().club()).isEqualTo(mended);
		assertThat(this.published.stream(Renaming.ClubChanged.class)).singleElement()
			.satisfies((changed) -> assertThat(changed.change()).satisfies((line) -> {
				assertThat(line.action()).isEqualTo("club.changed");
				assertThat(line.before()).isEqualTo(this.club + " (Skerrywick)");
				assertThat(line.after()).isEqualTo(this.club + " mended (Ebbhaven)");
				assertThat(line.actor()).isEqualTo(SECRETARY);
			}));
		assertRefused(() -> this.renaming.change(change(known, this.club, "Skerrywick"), SECRETARY), "stale-version");
		this.renaming.change(change(this.renaming.club(mended.id()), this.club, "Skerrywick"), SECRETARY);
		assertThat(this.entries.entry(entry.id()).team()).isEqualTo(entry.team());
	}

	@Test
	void aTeamIsMendedAndOnRecord() {
		EntryView entry = enter("Lanterns");
		Renaming.KnownTeam known = this.renaming.team(entry.team().id());
		this.renaming.change(new Renaming.ChangeTeam(known.team().id(), known.version(), "Lantern Row", "LAN-tern"),
				SECRETARY);
		assertThat(this.entries.entry(entry.id()).team().name()).isEqualTo("Lantern Row");
		assertThat(this.published.stream(Renaming.TeamChanged.class)).singleElement()
			.satisfies((changed) -> assertThat(changed.change()).satisfies((line) -> {
				assertThat(line.action()).isEqualTo("team.changed");
				assertThat(line.before()).isEqualTo("Lanterns (" + this.club + ", Skerrywick)");
				assertThat(line.after()).isEqualTo("Lantern Row (" + this.club + ", Skerrywick, say 'LAN-tern')");
			}));
		assertRefused(() -> this.renaming
			.change(new Renaming.ChangeTeam(known.team().id(), known.version(), "Lanterns", ""), SECRETARY),
				"stale-version");
	}

	@Test
	void whatIsSavedUnchangedIsNoChange() {
		Renaming.KnownTeam team = this.renaming.team(enter("Lanterns").team().id());
		this.renaming.change(new Renaming.ChangeTeam(team.team().id(), team.version(), " Lanterns", ""), SECRETARY);
		Renaming.KnownClub club = this.renaming.club(team.team().club().id());
		this.renaming.change(change(club, this.club, "Skerrywick"), SECRETARY);
		assertThat(this.published.stream(Renaming.TeamChanged.class)).isEmpty();
		assertThat(this.published.stream(Renaming.ClubChanged.class)).isEmpty();
	}

	@Test
	void aNameThatAnotherHasIsRefused() {
		Renaming.KnownTeam lanterns = this.renaming.team(enter("Lanterns").team().id());
		enter("Embers");
		assertRefused(
				() -> this.renaming
					.change(new Renaming.ChangeTeam(lanterns.team().id(), lanterns.version(), "EMBERS", ""), SECRETARY),
				"team-known");
		this.entries.enter(new EnterTeam(this.junior.id(), "Other " + this.club, "Skerrywick", "Embers", "", ""),
				SECRETARY);
		Renaming.KnownClub club = this.renaming.club(lanterns.team().club().id());
		assertRefused(() -> this.renaming.change(change(club, "other " + this.club, "Skerrywick"), SECRETARY),
				"club-known");
		assertRefused(() -> this.renaming.change(change(club, "Other " + this.club + " SC", "Skerrywick"), SECRETARY),
				"club-known");
		assertRefused(
				() -> this.renaming.change(
						new Renaming.ChangeTeam(lanterns.team().id(), lanterns.version(), "Em-bers", ""), SECRETARY),
				"team-known");
		assertRefused(() -> change(club, "=1+1", "Skerrywick"), "field-formula");
	}

	private static Renaming.ChangeClub change(Renaming.KnownClub known, String name, String town) {
		return new Renaming.ChangeClub(known.club().id(), known.version(), name, town, known.section());
	}

	@Test
	void needsAReasonOnceEntriesAreClosed() {
		move(CompetitionState.ENTRIES_CLOSED);
		assertRefused(() -> enter("Lanterns"), "late-reason-missing");
		EntryView late = this.entries.enter(
				new EnterTeam(this.junior.id(), this.club, "Skerrywick", "Lanterns", "", "Post was late"), SECRETARY);
		assertThat(late.isLate()).isTrue();
	}

	@Test
	void enterNobodyWhenOthersRefuse() {
		this.veto.reason = "The first segment has been drawn.";
		assertRefused(() -> enter("Lanterns"), "entry-refused");
		assertThat(this.entries.clubs()).extracting(ClubView::name).doesNotContain(this.club);
	}

	@Test
	void entersAndWithdrawsNobodyOnceFinal() {
		EntryView entry = enter("Lanterns");
		move(CompetitionState.ENTRIES_CLOSED);
		move(CompetitionState.RUNNING);
		move(CompetitionState.FINAL);
		assertRefused(() -> enter("Embers"), "competition-final");
		assertRefused(() -> this.entries.withdraw(entry.id(), entry.version(), "ill", SECRETARY), "competition-final");
	}

	@Test
	void withdrawsWithAReasonAndComesBack() {
		EntryView entry = enter("Lanterns");
		EntryView gone = this.entries.withdraw(entry.id(), entry.version(), " Two skaters ill ", SECRETARY);
		assertThat(gone.state()).isEqualTo(EntryState.WITHDRAWN);
		assertThat(gone.withdrawal()).isEqualTo(new EntryView.Withdrawal(NOW, "Two skaters ill"));
		assertThat(this.entries.entry(entry.id())).isEqualTo(gone);
		assertRefused(() -> this.entries.withdraw(entry.id(), gone.version(), "again", SECRETARY), "already-withdrawn");
		assertThat(enter("Lanterns")).satisfies((back) -> {
			assertThat(back.id()).isEqualTo(entry.id());
			assertThat(back.isEntered()).isTrue();
		});
	}

	@Test
	void refusesAStaleWithdrawalAndOneWithoutAReason() {
		EntryView entry = enter("Lanterns");
		assertRefused(() -> this.entries.withdraw(entry.id(), entry.version() + 1, "ill", SECRETARY), "stale-version");
		assertRefused(() -> this.entries.withdraw(entry.id(), entry.version(), " ", SECRETARY), "field-missing");
	}

	@Test
	void saysWhatIsNotThere() {
		EntryId nowhere = new EntryId(UUID.randomUUID());
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.entries.entry(nowhere));
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> this.entries.withdraw(nowhere, 0, "ill", SECRETARY));
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.entries
			.enter(new EnterTeam(new EventId(UUID.randomUUID()), "A", "B", "C", "", ""), SECRETARY));
	}

	@Test
	void tellsOthersAndTheRecord() {
		EntryView entry = enter("Lanterns");
		this.entries.withdraw(entry.id(), entry.version(), "ill", SECRETARY);
		assertThat(this.published.stream(EntryEvent.Entered.class)).singleElement()
			.satisfies((event) -> assertThat(event.change().after()).contains("Lanterns (" + this.club));
		assertThat(this.published.stream(EntryEvent.Withdrawn.class)).singleElement()
			.satisfies((event) -> assertThat(event.change().reason()).isEqualTo("ill"));
	}

	@Test
	void letsOneOfTwoSecretariesEnterTheSameTeam() throws Exception {
		for (int round = 1; round <= Races.ROUNDS; round++) {
			String team = "Lanterns " + round;
			Callable<String> act = () -> {
				try {
					return enter(team).state().name();
				}
				catch (ConflictException ex) {
					return ex.code();
				}
			};
			assertThat(Races.both(act, act)).containsExactlyInAnyOrder("ENTERED", "already-entered");
			assertThat(this.entries.ofEvent(this.junior.id())).hasSize(round);
		}
	}

	@Test
	void importsAllOrNothing() {
		String csv = header() + row("Junior", "Lanterns") + row("Senior", "Embers");
		assertThat(this.entryImport.preview(this.competition.id(), csv, Set.of()).bad())
			.extracting(EntryImport.Row::line)
			.containsExactly(3);
		assertRefused(() -> this.entryImport.apply(this.competition.id(), csv, EntryImport.Answers.NONE, SECRETARY),
				"import-rows-bad");
		assertThat(this.entries.ofEvent(this.junior.id())).isEmpty();
		assertThat(this.entryImport.apply(this.competition.id(), csv, new EntryImport.Answers(Set.of(3), Set.of()),
				SECRETARY))
			.isEqualTo(new EntryImport.Outcome(1, 1));
		assertThat(this.entries.ofEvent(this.junior.id())).hasSize(1);
	}

	@Test
	void looksAgainWhenAnImportIsAccepted() {
		String csv = header() + row("Junior", "Lanterns") + row("Junior", "Embers");
		assertThat(this.entryImport.preview(this.competition.id(), csv, Set.of()).bad()).isEmpty();
		enter("Embers");
		assertRefused(() -> this.entryImport.apply(this.competition.id(), csv, EntryImport.Answers.NONE, SECRETARY),
				"import-rows-bad");
		assertThat(this.entries.ofEvent(this.junior.id())).hasSize(1);
	}

	@Test
	void importsAnotherOneOnlyOnThePersonsWord() {
		enter("Lanterns");
		String csv = header() + row("Junior", "Lantrens");
		assertThat(this.entryImport.preview(this.competition.id(), csv, Set.of()).bad()).singleElement()
			.satisfies((row) -> assertThat(row.isAsked()).isTrue());
		assertRefused(() -> this.entryImport.apply(this.competition.id(), csv, EntryImport.Answers.NONE, SECRETARY),
				"import-rows-bad");
		assertThat(this.entryImport.preview(this.competition.id(), csv, Set.of(2)).bad()).isEmpty();
		this.entryImport.apply(this.competition.id(), csv, new EntryImport.Answers(Set.of(), Set.of(2)), SECRETARY);
		assertThat(this.entries.ofEvent(this.junior.id())).hasSize(2);
	}

	@Test
	void importsNothingWhenEveryRowIsSetAside() {
		assertRefused(() -> this.entryImport.apply(this.competition.id(), header() + row("Junior", "Lanterns"),
				new EntryImport.Answers(Set.of(2), Set.of()), SECRETARY), "import-nothing");
	}

	@Test
	void importsOnlyWhileEntriesAreOpen() {
		move(CompetitionState.ENTRIES_CLOSED);
		assertRefused(
				() -> this.entryImport.preview(this.competition.id(), header() + row("Junior", "Lanterns"), Set.of()),
				"entries-not-open");
	}

	@Test
	void readsBackWhatItExports() {
		this.entries.enter(new EnterTeam(this.junior.id(), this.club, "Skerry, upon \"Wick\"", "Lañterns", "LAN", ""),
				SECRETARY);
		this.entries.enter(new EnterTeam(this.adult.id(), this.club, "Skerry, upon \"Wick\"", "Lañterns", "", ""),
				SECRETARY);
		EntryView gone = this.entries
			.enter(new EnterTeam(this.adult.id(), this.club, "Skerry, upon \"Wick\"", "Embers", "", ""), SECRETARY);
		this.entries.withdraw(gone.id(), gone.version(), "ill", SECRETARY);
		String exported = this.entryImport.export(this.competition.id());
		openEntries();
		this.entryImport.apply(this.competition.id(), exported, EntryImport.Answers.NONE, SECRETARY);
		assertThat(this.entryImport.export(this.competition.id())).isEqualTo(exported)
			.contains("Lañterns")
			.doesNotContain("Embers");
	}

	@Test
	void refusesFilesThatAreTooLargeOrNotText() {
		assertRefused(() -> this.entryImport.textOf(new byte[EntryImport.LARGEST + 1]), "import-too-large");
		assertRefused(() -> this.entryImport.textOf(new byte[] { 'T', (byte) 0xE4, 'm' }), "import-not-utf8");
		assertThat(this.entryImport.textOf(("\uFEFFTäm").getBytes(StandardCharsets.UTF_16LE))).isEqualTo("Täm");
		assertThat(this.entryImport.textOf("Täm".getBytes(StandardCharsets.UTF_16))).isEqualTo("Täm");
		assertRefused(
				() -> this.entryImport.preview(this.competition.id(), "x".repeat(EntryImport.LARGEST + 1), Set.of()),
				"import-too-large");
	}

	private EntryView enter(String team) {
		return this.entries.enter(new EnterTeam(this.junior.id(), this.club, "Skerrywick", team, "", ""), SECRETARY);
	}

	private void move(CompetitionState next) {
		CompetitionView now = this.competitions.competition(this.competition.id());
		this.competitions.move(now.id(), now.version(), next, SECRETARY);
	}

	private static String header() {
		return "event,club,town,team,spoken_as\n";
	}

	private String row(String event, String team) {
		return event + "," + this.club + ",Skerrywick," + team + ",\n";
	}

	private static void assertRefused(Callable<?> act, String code) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::call)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

	/** Stands for the modules that may refuse. */
	static class Veto implements EntryGuard {

		private volatile String reason = "";

		@Override
		public Optional<Sentence> refusesEntry(EventId event) {
			return Optional.of(Sentence.said(this.reason)).filter((reason) -> !reason.isEmpty());
		}

	}

	@TestConfiguration(proxyBeanMethods = false)
	@Import({ CompetitionModule.class, Entries.class, EntryImport.class, EntryBook.class, EntryWindow.class,
			EventChange.class, OneClub.class, ClubContacts.class, TeamRegister.class, Renaming.class, SlipCheck.class })
	static class Outside {

		@Bean
		Clock clock() {
			return Clock.fixed(NOW, ZoneOffset.UTC);
		}

		@Bean
		Ids ids() {
			return new Ids(Clock.systemUTC(), new SecureRandom());
		}

		@Bean
		Veto veto() {
			return new Veto();
		}

	}

}
