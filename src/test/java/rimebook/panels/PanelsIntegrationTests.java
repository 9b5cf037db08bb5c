package rimebook.panels;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import jakarta.persistence.EntityManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.data.jpa.test.autoconfigure.DataJpaTest;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

import rimebook.accounts.SeatCodes;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.entries.ClubView;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.entries.Renaming;
import rimebook.entries.TeamView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;
import rimebook.shared.RimebookException;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;

@DataJpaTest(showSql = false)
@Import(PanelsModule.class)
@RecordApplicationEvents
class PanelsIntegrationTests {

	private static final Actor REFEREE = new Actor("Ines Harrow", "referee", "test");

	@Autowired
	private Panels panels;

	@Autowired
	private PanelSeating whole;

	@Autowired
	private OfficialImport officialImport;

	@Autowired
	private Competitions competitions;

	@Autowired
	private Entries entries;

	@Autowired
	private Renaming renaming;

	@Autowired
	private KnownNames known;

	@Autowired
	private SeatCodes codes;

	@Autowired
	private Segments segments;

	@Autowired
	private EntityManager entityManager;

	@Autowired
	private JdbcTemplate jdbc;

	@Autowired
	private ApplicationEvents published;

	private CompetitionView competition;

	private EventId junior;

	private EventId adult;

	@BeforeEach
	void enterTeams() {
		this.competition = this.competitions.create(CompetitionFixtures.aCompetition("Frostlight Trophy"), REFEREE);
		this.junior = addEvent("Junior", 3);
		this.adult = addEvent("Adult", 3);
		move(CompetitionState.ENTRIES_OPEN);
		enter(this.junior, "Harbour Blades", "Lanterns");
		enter(this.junior, "Harbour Blades", "Embers");
		enter(this.junior, "North Quay", "Pale Thaw");
	}

	@AfterEach
	void closeSegments() {
		this.segments.running = null;
	}

	@Test
	void keepsTheRegisterByName() {
		OfficialView second = register("Sten Vik", "");
		OfficialView first = register("Mara Lind", "Harbour Blades");
		assertThat(this.panels.officials()).containsExactly(first, second);
		assertThat(this.panels.official(first.id())).isEqualTo(first);
	}

	@Test
	void refusesTheSameNameTwice() {
		OfficialView mara = register("Mara Lind", "");
		assertRefused("official-known", () -> register("mara lind", "North Quay"));
		OfficialView sten = register("Sten Vik", "");
		assertRefused("official-known",
				() -> this.panels.change(sten.id(), sten.version(), new DraftOfficial("Mara Lind", "", ""), REFEREE));
		assertThat(
				this.panels.change(mara.id(), mara.version(), new DraftOfficial("Mara LIND", "", ""), REFEREE).name())
			.isEqualTo("Mara LIND");
	}

	@Test
	void refusesAStaleChangeOfAnOfficial() {
		OfficialView mara = register("Mara Lind", "");
		this.panels.change(mara.id(), mara.version(), new DraftOfficial("Mara Lind", "North Quay", ""), REFEREE);
		assertRefused("stale-version", () -> this.panels.change(mara.id(), mara.version(),
				new DraftOfficial("Mara Lind", "Harbour Blades", ""), REFEREE));
	}

	@Test
	void panelIsCompleteWithTheRefereeAndEveryJudge() {
		assertThat(this.panels.ofEvent(this.junior).missing()).hasToString("Referee, Judge 1, Judge 2, Judge 3");
		assertThat(this.panels.ofEvent(this.junior).empty()).extracting(SeatPlace::label)
			.containsExactly("Referee", "Judge 1", "Judge 2", "Judge 3");
		seat(this.junior, SeatKind.REFEREE, 1, register("Referee", ""));
		IntStream.rangeClosed(1, 2).forEach((n) -> seat(this.junior, SeatKind.JUDGE, n, register("Official " + n, "")));
		assertThat(this.panels.ofEvent(this.junior).empty()).extracting(SeatPlace::label).containsExactly("Judge 3");
		assertThat(this.panels.ofEvent(this.junior).isComplete()).isFalse();
		seat(this.junior, SeatKind.JUDGE, 3, register("Official 3", ""));
		assertThat(this.panels.ofEvent(this.junior).isComplete()).isTrue();
	}

	@Test
	void seatsAWholePanelAtOnce() {
		List<Panels.SeatOfficial> orders = List.of(order(SeatKind.REFEREE, 1, register("Mara Lind", ""), ""),
				order(SeatKind.JUDGE, 1, register("Sten Vik", ""), ""),
				order(SeatKind.JUDGE, 2, register("Ida Holm", "Harbour Blades"), "nobody else came"));
		PanelSeating.Outcome done = this.whole.seat(this.junior, orders, REFEREE);
		assertThat(done.refused()).isEmpty();
		assertThat(done.seated()).extracting(SeatView::label).containsExactly("Referee", "Judge 1", "Judge 2");
		assertThat(this.panels.ofEvent(this.junior).empty()).extracting(SeatPlace::label).containsExactly("Judge 3");
		assertThat(this.published.stream(AuditedChange.class).filter((change) -> change.action().equals("seat.taken")))
			.hasSize(3);
	}

	@Test
	void tellsOfEverySeatThatIsRefused() {
		OfficialView mara = register("Mara Lind", "");
		PanelSeating.Outcome done = this.whole.seat(this.junior,
				List.of(order(SeatKind.REFEREE, 1, mara, ""), order(SeatKind.JUDGE, 1, mara, ""),
						order(SeatKind.JUDGE, 2, register("Ida Holm", "Harbour Blades"), ""),
						order(SeatKind.JUDGE, 9, register("Sten Vik", ""), "")),
				REFEREE);
		assertThat(done.seated()).isEmpty();
		assertThat(done.refused().entrySet())
			.extracting((seat) -> seat.getKey().label(), (seat) -> seat.getValue().code())
			.containsExactlyInAnyOrder(tuple("Judge 1", "official-seated"), tuple("Judge 2", "official-bound"),
					tuple("Judge 9", "seat-unknown"));
	}

	@Test
	void officialsComeFromAFileAsSpreadsheetsWriteIt() {
		register("Mara Lind", "Beacon");
		String csv = "Level;Judge;Club\nnational;Sten Vik;North Quay\n;mara lind;Beacon\n;Ida Holm;\n";
		assertThat(this.officialImport.preview(csv).added()).extracting(OfficialImport.Row::name)
			.containsExactly("Sten Vik", "Ida Holm");
		assertThat(this.officialImport.preview(csv).known()).isEqualTo(1);
		assertThat(this.officialImport.apply(csv, Set.of(), REFEREE)).isEqualTo(2);
		assertThat(this.panels.officials()).extracting(OfficialView::name, OfficialView::qualification)
			.contains(tuple("Sten Vik", "national"), tuple("Ida Holm", ""));
	}

	@Test
	void aBadRowOfOfficialsIsMendedOrSetAside() {
		register("Mara Lind", "Beacon");
		String csv = "name,club\nMara Lind,North Quay\nSten Vik,\nSTEN VIK,Beacon\n,Beacon\nIda Holm,a,b\n";
		assertThat(this.officialImport.preview(csv).bad()).extracting(OfficialImport.Row::line)
			.containsExactly(2, 4, 5, 6);
		assertRefused("import-rows-bad", () -> this.officialImport.apply(csv, Set.of(2, 4), REFEREE));
		assertThat(this.officialImport.apply(csv, Set.of(2, 4, 5, 6), REFEREE)).isEqualTo(1);
		assertRefused("import-header", () -> this.officialImport.preview("club\nBeacon\n"));
	}

	@Test
	void aPanelForPointsHasATechnicalPanelToo() {
		CompetitionView planned = this.competitions.create(CompetitionFixtures.aCompetition("Rime Cup"), REFEREE);
		EventId senior = this.competitions
			.addEvent(planned.id(), CompetitionFixtures.aPointsEvent("Senior", 3), REFEREE)
			.id();
		assertThat(this.panels.places(senior)).extracting(SeatPlace::label)
			.containsExactly("Referee", "Assistant referee", "Judge 1", "Judge 2", "Judge 3", "Technical controller",
					"Technical specialist", "Technical specialist 2", "Data operator", "Substitute judge", "Accountant",
					"Announcer", "Timekeeper");
		seat(senior, SeatKind.TECHNICAL_SPECIALIST, 2, register("Official 1", ""));
		assertThat(this.panels.ofEvent(senior).seats()).extracting(SeatView::label)
			.containsExactly("Technical specialist 2");
	}

	@Test
	void listsSeatsInTheOrderOfThePanel() {
		seat(this.junior, SeatKind.TIMEKEEPER, 1, register("Official 1", ""));
		seat(this.junior, SeatKind.JUDGE, 2, register("Official 2", ""));
		seat(this.junior, SeatKind.JUDGE, 1, register("Official 3", ""));
		seat(this.junior, SeatKind.REFEREE, 1, register("Official 4", ""));
		assertThat(this.panels.ofEvent(this.junior).seats()).extracting(SeatView::label)
			.containsExactly("Referee", "Judge 1", "Judge 2", "Timekeeper");
		assertThat(this.panels.judges(this.junior)).extracting(SeatView::number).containsExactly(1, 2);
	}

	@Test
	void whatIsReadBackIsWhatWasSeated() {
		SeatView taken = seat(this.junior, SeatKind.JUDGE, 1, register("Sten Vik", "North Sound"));
		this.entityManager.flush();
		this.entityManager.clear();
		SeatView read = this.panels.seat(taken.id());
		assertThat(read).usingRecursiveComparison().ignoringFields("version").isEqualTo(taken);
		assertThat(read.official()).isNotNull().extracting(OfficialView::name).isEqualTo("Sten Vik");
	}

	@Test
	void refusesWhoBelongsToTheClubOfATeam() {
		OfficialView mara = register("Mara Lind", "harbour  BLADES");
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> seat(this.junior, SeatKind.JUDGE, 1, mara))
			.withMessageContaining("Embers, Lanterns")
			.withMessageContaining("Mara Lind is bound to this event: own club")
			.withMessageContaining("(Skate Canada rule 2502, as on info.skatecanada.ca, edition not stated there; "
					+ "own club: common practice); the rulebook in force decides")
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("official-bound"));
		assertThat(this.panels.ofEvent(this.junior).empty()).extracting(SeatPlace::label).contains("Judge 1");
	}

	@Test
	void ownClubRuleBindsTheRefereeButNotTheAnnouncer() {
		OfficialView mara = register("Mara Lind", "Harbour Blades");
		assertRefused("official-bound", () -> seat(this.junior, SeatKind.REFEREE, 1, mara));
		assertRefused("official-bound", () -> seat(this.junior, SeatKind.ACCOUNTANT, 1, mara));
		assertThat(seat(this.junior, SeatKind.ANNOUNCER, 1, mara).occupant().overrideReason()).isEmpty();
		assertThat(this.panels.conflicts(this.junior)).isEmpty();
	}

	@Test
	void aDeclaredBondRefusesTheSeatUntilAReasonIsGiven() {
		OfficialView kai = register("Kai Moor", "");
		declare(kai, InterestView.Kind.COACH, " lanterns", null);
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> seat(this.junior, SeatKind.JUDGE, 1, kai))
			.withMessageContaining("coach or choreographer, lanterns");
		SeatView seat = this.panels.seat(
				new Panels.SeatOfficial(this.junior, SeatKind.JUDGE, 1, kai.id(), "Allowed by the association"),
				REFEREE);
		assertThat(seat.occupant().overrideReason()).isEqualTo("Allowed by the association");
		assertThat(this.panels.conflicts(this.junior)).singleElement().satisfies((conflict) -> {
			assertThat(conflict.seat()).isEqualTo(seat.id());
			assertThat(conflict.grounds()).extracting(Sentence::english)
				.containsExactly("coach or choreographer, lanterns");
		});
		seat(this.adult, SeatKind.JUDGE, 1, kai);
	}

	/**
	 * Twelve months for a coach, twenty-four for a partner, none for a relation that
	 * ended: Skate Canada rule 2502.
	 */
	@ParameterizedTest
	@CsvSource({ "COACH, 12, 0, true", "COACH, 12, 1, false", "SKATING_PARTNER, 24, 0, true",
			"SKATING_PARTNER, 24, 1, false", "PERSONAL, 0, 0, true", "PERSONAL, 0, 1, false" })
	void aBondThatEndedCountsForItsTerm(InterestView.Kind kind, int monthsBefore, int andDays, boolean bound) {
		OfficialView kai = register("Kai Moor", "");
		declare(kai, kind, "Pale Thaw",
				this.competition.facts().firstDay().minusMonths(monthsBefore).minusDays(andDays));
		if (bound) {
			assertRefused("official-bound", () -> seat(this.junior, SeatKind.REFEREE, 1, kai));
		}
		else {
			assertThat(seat(this.junior, SeatKind.REFEREE, 1, kai).occupant().overrideReason()).isEmpty();
		}
	}

	@Test
	void aBondIsDeclaredOnceAndCanBeTakenBack() {
		OfficialView kai = register("Kai Moor", "");
		InterestView bond = declare(kai, InterestView.Kind.RELATIVE, "Pale Thaw", null);
		assertRefused("interest-known", () -> declare(kai, InterestView.Kind.RELATIVE, "Pale Thaw", null));
		this.entityManager.clear();
		this.panels.removeInterest(kai.id(), bond.id(), REFEREE);
		assertThat(this.panels.interests(kai.id())).isEmpty();
		assertRefused("interest-not-found", () -> this.panels.removeInterest(kai.id(), bond.id(), REFEREE));
		seat(this.junior, SeatKind.JUDGE, 1, kai);
	}

	private InterestView declare(OfficialView official, InterestView.Kind kind, String team, LocalDate lastDay) {
		return this.panels.declare(new Panels.DeclareInterest(official.id(), kind, team, lastDay), REFEREE);
	}

	@Test
	void ownClubRuleLooksAtTheEventAlone() {
		assertThat(seat(this.adult, SeatKind.JUDGE, 1, register("Mara Lind", "Harbour Blades")).official()).isNotNull();
	}

	@Test
	void withdrawnTeamIsNoConflict() {
		OfficialView kai = register("Kai Storm", "North Quay");
		assertRefused("official-bound", () -> seat(this.junior, SeatKind.JUDGE, 1, kai));
		EntryView paleThaw = this.entries.ofEvent(this.junior)
			.stream()
			.filter((entry) -> entry.team().name().equals("Pale Thaw"))
			.findFirst()
			.orElseThrow();
		this.entries.withdraw(paleThaw.id(), paleThaw.version(), "Injury", REFEREE);
		assertThat(seat(this.junior, SeatKind.JUDGE, 1, kai).occupant().overrideReason()).isEmpty();
	}

	@Test
	void overrideIsKeptShownAndOnTheRecord() {
		OfficialView mara = register("Mara Lind", "Harbour Blades");
		SeatView seat = this.panels.seat(
				new Panels.SeatOfficial(this.junior, SeatKind.JUDGE, 1, mara.id(), "No other judge could travel"),
				REFEREE);
		assertThat(seat.occupant().overrideReason()).isEqualTo("No other judge could travel");
		assertThat(this.panels.conflicts(this.junior)).singleElement().satisfies((conflict) -> {
			assertThat(conflict.seat()).isEqualTo(seat.id());
			assertThat(conflict.grounds()).extracting(Sentence::english).containsExactly("own club, Embers, Lanterns");
		});
		assertThat(this.published.stream(AuditedChange.class).filter((change) -> change.action().equals("seat.taken")))
			.singleElement()
			.satisfies((change) -> assertThat(change.reason()).isEqualTo("No other judge could travel"))
			.satisfies((change) -> assertThat(change.after())
				.isEqualTo("Judge 1, Junior: Mara Lind (Harbour Blades), national"));
	}

	@Test
	void reasonIsDroppedWhereTheRuleDoesNotRefuse() {
		OfficialView sten = register("Sten Vik", "North Sound");
		SeatView seat = this.panels
			.seat(new Panels.SeatOfficial(this.junior, SeatKind.JUDGE, 1, sten.id(), "Just in case"), REFEREE);
		assertThat(seat.occupant().overrideReason()).isEmpty();
	}

	@Test
	void showsTheConflictOfATeamThatCameLater() {
		SeatView seat = seat(this.junior, SeatKind.JUDGE, 1, register("Sten Vik", "North Sound"));
		assertThat(this.panels.conflicts(this.junior)).isEmpty();
		enter(this.junior, "North Sound", "Auroras");
		assertThat(this.panels.conflicts(this.junior)).singleElement().satisfies((conflict) -> {
			assertThat(conflict.seat()).isEqualTo(seat.id());
			assertThat(conflict.grounds()).extracting(Sentence::english).containsExactly("own club, Auroras");
		});
	}

	@Test
	void aBondThatCameAfterTheReasonIsAskedAboutAgain() {
		OfficialView mara = register("Mara Lind", "Harbour Blades");
		SeatView seat = this.panels.seat(order(SeatKind.JUDGE, 1, mara, "Nobody else could travel"), REFEREE);
		assertThat(unsettled()).isEmpty();
		declare(mara, InterestView.Kind.COACH, "Pale Thaw", null);
		assertThat(unsettled()).containsExactly("coach or choreographer, Pale Thaw");
		assertRefused("field-missing", () -> this.panels.setAside(seat.id(), version(seat), " ", REFEREE));
		assertRefused("stale-version", () -> this.panels.setAside(seat.id(), 99, "Allowed", REFEREE));
		this.panels.setAside(seat.id(), version(seat), "Allowed by the association", REFEREE);
		assertThat(unsettled()).isEmpty();
		assertThat(this.panels.seat(seat.id()).occupant().overrideReason()).isEqualTo("Allowed by the association");
		assertRefused("seat-not-bound", () -> this.panels.setAside(seat.id(), version(seat), "Allowed", REFEREE));
		assertThat(this.published.stream(AuditedChange.class)
			.filter((change) -> change.action().equals("seat.bond-set-aside"))).singleElement()
			.satisfies((change) -> assertThat(change.reason()).isEqualTo("Allowed by the association"))
			.satisfies((change) -> assertThat(change.after()).contains("Judge 1, Junior: Mara Lind",
					"coach or choreographer, Pale Thaw"));
		enter(this.junior, "Harbour Blades", "Auroras");
		assertThat(unsettled()).containsExactly("own club, Auroras, Embers, Lanterns");
	}

	/** They were kept in English before there were keys. */
	@Test
	void aBondSetAsideBeforeThereWereKeysStaysSetAside() {
		OfficialView mara = register("Mara Lind", "Harbour Blades");
		declare(mara, InterestView.Kind.COACH, "Pale Thaw", null);
		SeatView seat = this.panels.seat(order(SeatKind.JUDGE, 1, mara, "Nobody else could travel"), REFEREE);
		keepBonds(seat, "own club, Embers, Lanterns");
		assertThat(unsettled()).containsExactly("coach or choreographer, Pale Thaw");
		keepBonds(seat, "own club, Embers, Lanterns\ncoach or choreographer, Pale Thaw");
		assertThat(unsettled()).isEmpty();
		keepBonds(seat, "{\"key\":\"panels.bond.own-club\",\"arguments\":[\"Embers, Lanterns\"]}");
		assertThat(unsettled()).containsExactly("coach or choreographer, Pale Thaw");
	}

	@Test
	void anOfficialMayBeBoundToEveryTeamOfALargeEvent() {
		for (int each = 1; each <= 260; each++) {
			enter(this.junior, "Harbour Blades",
					"The Long Winter Evening Lantern Light Skaters of Harbour Quay " + each);
		}
		OfficialView mara = register("Mara Lind", "Harbour Blades");
		SeatView seat = this.panels.seat(order(SeatKind.JUDGE, 1, mara, "Nobody else could travel"), REFEREE);
		this.entityManager.flush();
		this.entityManager.clear();
		assertThat(this.jdbc.queryForObject("select char_length(override_grounds) from seat where id = ?",
				Integer.class, seat.id().value()))
			.isGreaterThan(20_000);
		assertThat(unsettled()).isEmpty();
		enter(this.junior, "Harbour Blades", "Auroras");
		assertThat(unsettled()).singleElement().asString().contains("Auroras");
	}

	@Test
	void aMendedClubMakesASeatedJudgeBound() {
		seat(this.junior, SeatKind.JUDGE, 1, register("Sten Vik", "South Quay"));
		assertThat(unsettled()).isEmpty();
		rename("North Quay", "South Quay");
		assertThat(unsettled()).containsExactly("own club, Pale Thaw");
	}

	@Test
	void theRegisterFollowsAMendedClubSoThatNoBondIsLost() {
		OfficialView mara = register("Mara Lind", "harbour blades SC");
		OfficialView sten = register("Sten Vik", "North Quay");
		rename("Harbour Blades", "Lantern Wharf");
		assertThat(this.panels.official(mara.id()).club()).isEqualTo("Lantern Wharf");
		assertThat(this.panels.official(sten.id())).isEqualTo(sten);
		assertRefused("official-bound", () -> seat(this.junior, SeatKind.JUDGE, 1, mara));
	}

	@Test
	void aBondFollowsAMendedTeam() {
		OfficialView kai = register("Kai Moor", "");
		declare(kai, InterestView.Kind.COACH, "Pale Thaw", null);
		TeamView team = this.entries.ofEvent(this.junior)
			.stream()
			.map(EntryView::team)
			.filter((one) -> one.name().equals("Pale Thaw"))
			.findFirst()
			.orElseThrow();
		this.renaming.change(
				new Renaming.ChangeTeam(team.id(), this.renaming.team(team.id()).version(), "Grey Morning", ""),
				REFEREE);
		assertThat(this.panels.interests(kai.id())).extracting(InterestView::team)
			.containsExactly("Grey Morning", "Pale Thaw");
		assertRefused("official-bound", () -> seat(this.junior, SeatKind.JUDGE, 1, kai));
	}

	@ParameterizedTest
	@CsvSource({ "Harbour Blades Skating Club, own club", "S.C. Harbour-Blades, own club",
			"Harbor Blades, perhaps own club", "Harbour, perhaps own club" })
	void otherFormsAndNearMissesOfAClubAreAskedAbout(String club, String ground) {
		OfficialView mara = register("Mara Lind", club);
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> seat(this.junior, SeatKind.JUDGE, 1, mara))
			.withMessageContaining("is bound to this event: " + ground);
		this.panels.seat(order(SeatKind.JUDGE, 1, mara, "It is another club"), REFEREE);
		assertThat(unsettled()).isEmpty();
	}

	@Test
	void aNameThatIsNotInTheListIsComparedWithThoseThatAre() {
		register("Mara Lind", "Far Cove Skaters");
		assertThat(this.known.clubs()).contains("Harbour Blades", "North Quay", "Far Cove Skaters").doesNotContain("");
		assertThat(this.known.teams()).contains("Embers", "Lanterns", "Pale Thaw");
		assertThat(this.known.club("club", " HARBOUR BLADES sc", false)).isEqualTo("Harbour Blades");
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.known.club("club", "Harbor Blades", false))
			.withMessageContaining("'Harbor Blades' is nearly 'Harbour Blades'")
			.satisfies((refusal) -> assertThat(refusal.field()).isEqualTo("club"));
		assertThat(this.known.club("club", "Harbor Blades", true)).isEqualTo("Harbor Blades");
		assertThat(this.known.club("club", "Quite Another", false)).isEqualTo("Quite Another");
		assertThat(this.known.team("team", "pale thaw", false)).isEqualTo("Pale Thaw");
		assertRefused("name-near", () -> this.known.team("team", "Pale Thaws", false));
	}

	private void keepBonds(SeatView seat, String words) {
		this.entityManager.flush();
		this.jdbc.update("update seat set override_grounds = ? where id = ?", words, seat.id().value());
		this.entityManager.clear();
	}

	private List<String> unsettled() {
		return this.panels.conflicts(this.junior)
			.stream()
			.flatMap((one) -> one.unsettled().stream())
			.map(Sentence::english)
			.toList();
	}

	private int version(SeatView seat) {
		return this.panels.seat(seat.id()).version();
	}

	private void rename(String club, String name) {
		ClubView found = this.entries.clubs()
			.stream()
			.filter((one) -> one.name().equals(club))
			.findFirst()
			.orElseThrow();
		this.renaming.change(
				new Renaming.ChangeClub(found.id(), this.renaming.club(found.id()).version(), name, found.town(), ""),
				REFEREE);
	}

	@Test
	void oneOfficialHasOneJudgesSeatInAnEvent() {
		OfficialView sten = register("Sten Vik", "");
		seat(this.junior, SeatKind.JUDGE, 1, sten);
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.JUDGE, 2, sten));
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.REFEREE, 1, sten));
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.SUBSTITUTE, 1, sten));
		assertThat(seat(this.adult, SeatKind.REFEREE, 1, sten).official()).isEqualTo(sten);
	}

	@Test
	void refereeDoesNotJudgeButMayAnnounce() {
		OfficialView sten = register("Sten Vik", "");
		seat(this.junior, SeatKind.REFEREE, 1, sten);
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.JUDGE, 1, sten));
		assertThat(seat(this.junior, SeatKind.ANNOUNCER, 1, sten).official()).isEqualTo(sten);
	}

	@Test
	void seatsExcludeEachOtherWhicheverWasTakenFirst() {
		OfficialView sten = register("Sten Vik", "");
		seat(this.junior, SeatKind.REFEREE, 1, sten);
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.SUBSTITUTE, 1, sten));
		OfficialView kai = register("Kai Storm", "");
		seat(this.junior, SeatKind.SUBSTITUTE, 1, kai);
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.REFEREE, 1, kai));
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.ASSISTANT_REFEREE, 1, kai));
	}

	@Test
	void oneOfficialDoesNotGiveBothSignatures() {
		OfficialView sten = register("Sten Vik", "");
		seat(this.junior, SeatKind.REFEREE, 1, sten);
		assertRefused("official-seated", () -> seat(this.junior, SeatKind.ACCOUNTANT, 1, sten));
		assertThat(seat(this.adult, SeatKind.ACCOUNTANT, 1, sten).official()).isEqualTo(sten);
		assertRefused("official-seated", () -> seat(this.adult, SeatKind.REFEREE, 1, sten));
	}

	@Test
	void refusesATakenSeatAndASeatThatTheEventHasNot() {
		seat(this.junior, SeatKind.JUDGE, 1, register("Sten Vik", ""));
		OfficialView kai = register("Kai Storm", "");
		assertRefused("seat-taken", () -> seat(this.junior, SeatKind.JUDGE, 1, kai));
		assertRefused("seat-unknown", () -> seat(this.junior, SeatKind.JUDGE, 4, kai));
		assertRefused("seat-unknown", () -> seat(this.junior, SeatKind.TECHNICAL_CONTROLLER, 1, kai));
	}

	@Test
	void vacatesASeatForSomebodyElse() {
		SeatView taken = seat(this.junior, SeatKind.JUDGE, 1, register("Sten Vik", ""));
		assertRefused("stale-version", () -> this.panels.vacate(taken.id(), taken.version() + 1, REFEREE));
		SeatView empty = this.panels.vacate(taken.id(), this.panels.seat(taken.id()).version(), REFEREE);
		assertThat(empty.official()).isNull();
		assertRefused("seat-empty", () -> this.panels.vacate(empty.id(), empty.version(), REFEREE));
		assertThat(seat(this.junior, SeatKind.JUDGE, 1, register("Kai Storm", "")).id()).isEqualTo(taken.id());
	}

	@Test
	void judgesStayWhileASegmentIsOpenButTheAnnouncerMayChange() {
		SeatView judge = seat(this.junior, SeatKind.JUDGE, 1, register("Sten Vik", ""));
		this.segments.running = this.junior;
		assertRefused("panel-in-use", () -> this.panels.vacate(judge.id(), judge.version(), REFEREE));
		OfficialView kai = register("Kai Storm", "");
		assertRefused("panel-in-use", () -> seat(this.junior, SeatKind.JUDGE, 2, kai));
		assertThat(seat(this.junior, SeatKind.ANNOUNCER, 1, kai).official()).isEqualTo(kai);
		assertThat(this.panels.issueCode(judge.id(), REFEREE).code()).isNotNull();
	}

	@Test
	void nothingChangesOnceTheCompetitionIsFinal() {
		move(CompetitionState.ENTRIES_CLOSED);
		move(CompetitionState.RUNNING);
		move(CompetitionState.FINAL);
		OfficialView sten = register("Sten Vik", "");
		assertRefused("competition-final", () -> seat(this.junior, SeatKind.JUDGE, 1, sten));
		assertRefused("competition-final", () -> this.panels.issueCodes(this.junior, REFEREE));
	}

	@Test
	void everyJudgesSeatGetsItsOwnCode() {
		PanelView panel = this.panels.issueCodes(this.junior, REFEREE);
		List<SeatView> judges = this.panels.judges(this.junior);
		assertThat(panel.seats()).isEqualTo(judges);
		assertThat(judges).extracting(SeatView::label).containsExactly("Judge 1", "Judge 2", "Judge 3");
		assertThat(judges).extracting(SeatView::code)
			.doesNotHaveDuplicates()
			.allSatisfy((code) -> assertThat(code).hasSize(8));
		assertThat(this.panels.issueCodes(this.junior, REFEREE)).isEqualTo(panel);
		assertThat(this.codes.pair(code(judges.get(2)), "tablet", null).seat().label()).isEqualTo("Judge 3, Junior");
	}

	@Test
	void newCodeShutsOutTheOldOneAndItsTablet() {
		this.panels.issueCodes(this.junior, REFEREE);
		SeatView judge = this.panels.judges(this.junior).get(0);
		SeatCodes.Pairing pairing = this.codes.pair(code(judge), "tablet", null);
		assertThat(this.panels.seat(judge.id()).tablet().pairedAt()).isNotNull();
		SeatView renewed = this.panels.issueCode(judge.id(), REFEREE);
		assertThat(renewed.code()).isNotEqualTo(judge.code());
		assertThat(renewed.tablet().pairedAt()).isNull();
		this.entityManager.flush();
		assertThat(this.codes.grantOf(pairing.token())).isEmpty();
		assertRefused("seat-code-unknown", () -> this.codes.pair(code(judge), "tablet", null));
	}

	@Test
	void whoLeavesTakesNoCodeAlong() {
		SeatView judge = seat(this.junior, SeatKind.JUDGE, 1, register("Sten Vik", ""));
		assertThat(this.panels.vacate(judge.id(), judge.version(), REFEREE).code()).isNull();
		seat(this.junior, SeatKind.JUDGE, 1, register("Kai Storm", ""));
		SeatView coded = this.panels.issueCode(judge.id(), REFEREE);
		assertThat(this.panels.vacate(judge.id(), coded.version(), REFEREE).code()).isNotNull()
			.isNotEqualTo(coded.code());
	}

	@Test
	void onlyJudgesHaveACard() {
		SeatView referee = seat(this.junior, SeatKind.REFEREE, 1, register("Sten Vik", ""));
		assertRefused("seat-without-card", () -> this.panels.issueCode(referee.id(), REFEREE));
	}

	@Test
	void saysWhatIsNotThere() {
		SeatId nowhere = SeatId.of("00000000-0000-7000-8000-000000000000");
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.panels.seat(nowhere));
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.panels.vacate(nowhere, 0, REFEREE));
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> this.panels.official(new OfficialView.Id(nowhere.value())));
	}

	private EventId addEvent(String name, int judges) {
		return this.competitions.addEvent(this.competition.id(), CompetitionFixtures.anEvent(name, judges), REFEREE)
			.id();
	}

	private void move(CompetitionState next) {
		this.competition = this.competitions.move(this.competition.id(), this.competition.version(), next, REFEREE);
	}

	private EntryView enter(EventId event, String club, String team) {
		return this.entries.enter(new EnterTeam(event, club, "Skerrywick", team, "", ""), REFEREE);
	}

	private OfficialView register(String name, String club) {
		return this.panels.register(new DraftOfficial(name, club, "national"), REFEREE);
	}

	private Panels.SeatOfficial order(SeatKind kind, int number, OfficialView official, String reason) {
		return new Panels.SeatOfficial(this.junior, kind, number, official.id(), reason);
	}

	private SeatView seat(EventId event, SeatKind kind, int number, OfficialView official) {
		return this.panels.seat(new Panels.SeatOfficial(event, kind, number, official.id(), ""), REFEREE);
	}

	private static String code(SeatView seat) {
		String code = seat.code();
		assertThat(code).isNotNull();
		return code;
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
