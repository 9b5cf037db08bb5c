package rimebook.managers;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.music.MusicDeadlines;
import rimebook.music.Tones;
import rimebook.results.ResultPublication;
import rimebook.results.Standings;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.EventEligibility;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rosters.RulesView;
import rimebook.rosters.SamePerson;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.timetable.BlockDraft;
import rimebook.timetable.PlanView;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;
import rimebook.timetable.plan.Block;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** A team's managers do their own part, from the link to the protest. */
@WholeApplication
class ManagersIntegrationTests {

	private static final Pattern TOKEN = Pattern.compile("/manager#([A-Za-z0-9_-]{43})");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private SmallCompetition day;

	private EntryView team;

	private EntryView further;

	private String family;

	@BeforeEach
	void twoTeams() {
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.aPointsEvent("Senior", 3));
		this.team = this.day.entries().get(0);
		this.further = this.day.entries().get(1);
		this.family = "Firn" + UUID.randomUUID().toString().replaceAll("[^a-f]", "");
	}

	@Test
	void theDeskGivesRenewsAndShutsLinks() {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String desk = "/desk/managers/" + this.day.competition().id();
		Visitor.Page given = secretary.open(desk).submit("form.inline", Map.of());
		assertThat(given.text()).contains("2 links are given", "not opened yet");
		assertThat(TOKEN.matcher(given.text()).results().count()).isEqualTo(2);
		assertThat(lines("entry.manager-let-in")).isEqualTo(1);
		String token = TOKEN.matcher(given.text()).results().findFirst().orElseThrow().group(1);
		Visitor manager = new Visitor(this.port);
		Visitor.Page page = manager.open("/manager").submit("#open", Map.of("token", "http://rink/manager#" + token));
		assertThat(page.path()).isEqualTo("/manager");
		assertThat(page.text()).contains("Team 1, Senior", "There is no roster yet.");
		assertThat(page.document().outerHtml()).doesNotContain(token);
		assertThat(manager.bytes("/manager").headers().firstValue("Referrer-Policy")).hasValue("no-referrer");
		assertThat(manager.bytes("/manager").headers().firstValue("Cache-Control").orElseThrow()).contains("no-store");
		assertThat(secretary.open(desk).text()).contains("first opened");
		secretary.open(desk).submit("form[action$=" + this.team.id() + "/revocation]", Map.of());
		Visitor.Page shut = manager.open("/manager");
		assertThat(shut.status()).isEqualTo(410);
		assertThat(shut.text()).contains("This link was shut.", "Ask the secretary").doesNotContain("Team 1");
		Visitor.Page renewed = secretary.open(desk).submit("form[action$=" + this.team.id() + "]", Map.of());
		assertThat(renewed.text()).contains("The link is given.");
		assertThat(new Visitor(this.port).open("/manager?lang=fi").submit("#open", Map.of("token", token)).text())
			.contains("Tämä linkki ei avaa mitään.");
		assertThat(lines("entry.manager-link-renewed")).isEqualTo(1);
	}

	@Test
	void whatIsMissingStandsInTheOrderOfItsDeadlinesInThreeLanguages() {
		deadlines(Instant.now().plusSeconds(7200), Instant.now().plusSeconds(3600));
		Visitor manager = manager();
		String first = this.day.event().segments().get(0).name();
		String english = manager.open("/manager").text();
		assertThat(english.indexOf("There is no music for " + first + " yet.")).isPositive()
			.isLessThan(english.indexOf("There is no roster yet."));
		assertThat(english.indexOf("Nothing is planned for " + first))
			.isGreaterThan(english.indexOf("There is no roster yet."));
		assertThat(manager.open("/manager?lang=fr").text()).contains("Ce qui manque encore", "jusqu’au",
				"Il n’y a pas encore de musique");
		assertThat(manager.open("/manager/roster").document().select("html").attr("lang")).as("it stays chosen")
			.isEqualTo("fr");
		assertThat(manager.open("/manager/roster?lang=fi").text()).contains("Lisää henkilö");
	}

	@Test
	void practiceIceIsToldFromThePerformanceItIsFor() {
		Timetables timetables = this.context.getBean(Timetables.class);
		PlanView filled = timetables.fill(this.day.competition().id(), 0, SECRETARY);
		PlanView with = timetables.add(
				this.day.competition().id(), filled.number(), new BlockDraft(filled.plan().sheets().get(0).place(),
						Block.Kind.PRACTICE, "", 480, Block.Timing.NEXT, Block.Part.all(this.day.segment(1).value())),
				0, SECRETARY);
		this.context.getBean(TimetableVersions.class)
			.publish(this.day.competition().id(), with.number(), "", SECRETARY);
		String where = "Senior, " + this.day.event().segments().get(0).name();
		Visitor manager = manager();
		assertThat(times(manager.open("/manager"))).startsWith("Practice ice: " + where).contains(where);
		assertThat(times(manager.open("/manager?lang=fr"))).anyMatch((name) -> name.endsWith(" : " + where));
	}

	private static List<String> times(Visitor.Page page) {
		return page.document().select("section[aria-labelledby=times] .name").eachText();
	}

	@Test
	void aPersonWhoIsKnownElsewhereIsNotToldOf() {
		RosterView.Place known = this.context.getBean(Rosters.class)
			.addNew(this.further.id(), new DraftSkater("Aila", this.family, LocalDate.of(2011, 3, 9), "MN-77",
					this.further.team().club().id()), PlaceRole.SKATES, true, "", SECRETARY);
		Visitor manager = manager();
		Visitor.Page added = add(manager, "Aila", "2011-03-09");
		assertThat(added.text()).contains("The person is on the roster.", "Aila " + this.family)
			.doesNotContain("2011", "MN-77", "known already", "Team 2");
		RosterView.Place own = own().get(0);
		assertThat(own.skater().id()).isNotEqualTo(known.skater().id());
		assertThat(add(manager, "Aila", "").text()).contains("is on this roster already");
		Visitor.Page person = manager.open("/manager/roster/" + own.id());
		assertThat(person.document().outerHtml()).contains("birth date known").doesNotContain("2011-03-09");

		SamePerson same = this.context.getBean(SamePerson.class);
		SkaterView typed = this.context.getBean(Skaters.class).skater(own.skater().id());
		same.merge(new SamePerson.Merge(typed.id(), typed.version(), known.skater().id(), known.skater().version(),
				"Written down twice."), SECRETARY);
		Visitor.Page merged = manager.open("/manager/roster/" + own.id());
		assertThat(merged.text()).contains("kept by the secretary").doesNotContain("MN-77", "2011", "Team 2");
		assertThat(merged.document().select("form[action$=" + own.id() + "]")).isEmpty();
	}

	@Test
	void ofTwoManagersTheLaterOneSeesWhatChangedAndDecides() {
		Visitor first = manager();
		Visitor second = again();
		add(first, "Aila", "2011-03-09");
		String path = "/manager/roster/" + own().get(0).id();
		Visitor.Page early = first.open(path);
		Visitor.Page late = second.open(path);
		early.submit("form[action$=" + path + "]", Map.of("givenName", "Ailla"));
		Visitor.Page refused = late.submit("form[action$=" + path + "]",
				Map.of("givenName", "Aiila", "membershipNumber", "MN-8"));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.text()).contains("Somebody else changed", "Ailla " + this.family);
		assertThat(refused.document().selectFirst("#givenName").attr("value")).isEqualTo("Aiila");
		assertThat(refused.document().selectFirst("#membershipNumber").attr("value")).isEqualTo("MN-8");
		refused.submit("form[action$=" + path + "]", Map.of());
		SkaterView.Facts facts = own().get(0).skater().facts();
		assertThat(facts.givenName()).isEqualTo("Aiila");
		assertThat(facts.birthDate()).as("what is left empty stays").isEqualTo(LocalDate.of(2011, 3, 9));
		assertThat(facts.membershipNumber()).isEqualTo("MN-8");
		first.open(path).submit("form[action$=/part]", Map.of("role", "LEFT"));
		assertThat(second.open("/manager/roster").text()).contains("Who was on the roster");
		second.open(path).submit("form[action$=/part]", Map.of("role", "ALTERNATE"));
		assertThat(own().get(0).role()).isEqualTo(PlaceRole.ALTERNATE);
	}

	@Test
	void consentOfAMinorNeedsTheGuardianAndIsTakenBack() {
		Visitor manager = manager();
		add(manager, "Aila", LocalDate.now().minusYears(12).toString());
		String path = "/manager/roster/" + own().get(0).id();
		Visitor.Page refused = manager.open(path)
			.submit("form[action$=/consent]", Map.of("printed", "yes", "on", LocalDate.now().toString()));
		assertThat(refused.text()).contains("for a minor, please say who agreed");
		refused.submit("form[action$=/consent]", Map.of("guardian", "Nell Thaw"));
		assertThat(own().get(0).skater().consent().guardian()).isEqualTo("Nell Thaw");
		manager.open(path).submit("form[action$=/consent]", Map.of("printed", "no"));
		assertThat(own().get(0).skater().consent().isGiven()).isFalse();
	}

	@Test
	void afterTheDeadlineThePageSaysWhoToTurnTo() {
		Visitor manager = manager();
		Visitor.Page open = manager.open("/manager/roster");
		Visitor.Page music = manager.open("/manager/music/" + this.day.segment(1));
		deadlines(Instant.now().minusSeconds(60), Instant.now().minusSeconds(60));
		Visitor.Page refused = open.submit("form[action$=/roster]", Map.of("givenName", "Aila", "familyName", "Rime"));
		assertThat(refused.text()).contains("The deadline for rosters is over. Ask the secretary");
		assertThat(own()).isEmpty();
		assertThat(manager.open("/manager/roster").document().select("form.sheet")).isEmpty();
		assertThat(music.upload("form.sheet", Map.of(), "a.wav", Tones.wav(2000, 440)).text())
			.contains("The deadline for music is over.");
		this.day.move(CompetitionState.ENTRIES_CLOSED);
		this.day.move(CompetitionState.RUNNING);
		assertThat(manager.open("/manager/roster").text()).contains("Ask the referee");
	}

	@Test
	void elementsAreFoundTakenAndKept() {
		Visitor manager = manager();
		String path = "/manager/elements/" + this.day.segment(1);
		Visitor.Page found = manager.open(path).submit("form.sheet", Map.of("find", "move element", "act", "find"));
		assertThat(found.text()).contains("ME4");
		Visitor.Page taken = found.submit("form.sheet", Map.of("take", "ME4"));
		assertThat(taken.document().selectFirst("#codes").text()).isEqualTo("ME4");
		assertThat(manager.open(path).submit("form.sheet", Map.of("codes", "XX9", "act", "keep")).text())
			.contains("has no such code");
		Visitor.Page late = again().open(path);
		assertThat(taken.submit("form.sheet", Map.of("act", "keep")).text()).contains("The plan is kept.",
				"move element");
		Visitor.Page stale = late.submit("form.sheet", Map.of("codes", "TwE2", "act", "keep"));
		assertThat(stale.text()).contains("Somebody else changed this plan", "As it is kept now: ME4");
		assertThat(stale.submit("form.sheet", Map.of("act", "keep")).text()).contains("TwE2");
		assertThat(manager.open(path + "?lang=fi").submit("form.sheet", Map.of("find", "me4", "act", "find")).text())
			.contains("taso 4");
	}

	@Test
	void musicIsHandedInReplacedAndBroughtAlong() {
		Visitor manager = manager();
		String path = "/manager/music/" + this.day.segment(1);
		byte[] file = Tones.wav(161_000, 440);
		Visitor.Page music = manager.open(path).upload("form.sheet", Map.of(), "song.mp3", file);
		assertThat(music.text()).contains("The music is handed in.", "2:41", "song.mp3");
		assertThat(manager.bytes(music.document().selectFirst("audio").attr("src")).body()).isEqualTo(file);
		assertThat(manager.open(path).upload("form.sheet", Map.of(), "x.mp3", new byte[9]).status()).isEqualTo(422);
		assertThat(manager.open(path).upload("form.sheet", Map.of(), "new.wav", Tones.wav(100_000, 441)).text())
			.contains("Version 2", "Version 1", "1:40");
		manager.open("/manager/music").submit("form[action$=/on-site]", Map.of());
		assertThat(manager.open("/manager/music").text()).contains("you bring it to the rink");
		assertThat(this.database
			.sql("select actor from record_line where action = 'music.handed-in'" + " and subject_id = ?")
			.param(this.team.id().toString())
			.query(String.class)
			.list()).containsOnly("Manager, by the link of the team");
	}

	@Test
	void questionsAndTheNameGoToTheOfficials() {
		Visitor manager = manager();
		Visitor.Page empty = manager.open("/manager/questions").submit("form.sheet", Map.of("question", "May we?"));
		assertThat(empty.status()).isEqualTo(422);
		assertThat(empty.document().selectFirst("#question").text()).isEqualTo("May we?");
		assertThat(empty.submit("form.sheet", Map.of("askedBy", "Nell Thaw")).text()).contains("waits for the referee");
		Rulings rulings = this.context.getBean(Rulings.class);
		QuestionView asked = rulings.askedFor(this.team.id()).get(0);
		rulings.rule(
				new Rulings.GiveRuling(asked.id(), 0,
						new RulingView.Answer(RulingView.Verdict.ALLOWED, "", "It is a jump.", "", false), ""),
				REFEREE);
		assertThat(manager.open("/manager/questions").text()).contains("allowed", "It is a jump.");
		assertThat(manager.open("/manager/name").submit("form.sheet", Map.of("spokenAs", "TEEM wun")).text())
			.contains("It is kept how your name is said.");
		assertThat(manager.open("/manager/name").text()).contains("TEEM wun");
	}

	@Test
	void howTheNameSoundsIsRecordedHeardReplacedAndRemoved() {
		Visitor manager = manager();
		Visitor.Page page = manager.open("/manager/name");
		Visitor.Page second = manager.open("/manager/name");
		assertThat(page.text()).contains("There is no recording.");
		byte[] voice = Tones.wav(2000, 440);
		Visitor.Page kept = page.upload("form[enctype]", Map.of(), "us.wav", voice);
		assertThat(kept.text()).contains("The recording is kept.", "2.0 seconds");
		assertThat(manager.bytes(kept.document().selectFirst("audio").attr("src")).body()).isEqualTo(voice);
		Visitor.Page stale = second.upload("form[enctype]", Map.of(), "other.wav", Tones.wav(3000, 441));
		assertThat(stale.status()).isEqualTo(422);
		assertThat(stale.text()).contains("2.0 seconds");
		assertThat(kept.upload("form[enctype]", Map.of(), "long.wav", Tones.wav(21_000, 440)).text())
			.contains("at most 20 are taken");
		assertThat(kept.upload("form[enctype]", Map.of(), "us.exe", "MZ no sound".getBytes()).status()).isEqualTo(422);
		assertThat(manager.open("/manager/name?lang=fi").upload("form[enctype]", Map.of(), "x.wav", new byte[0]).text())
			.contains("Miltä se kuulostaa");
		manager.open("/manager/name?lang=en").submit("form[action$=/removal]", Map.of());
		assertThat(manager.open("/manager/name").text()).contains("There is no recording.");
		assertThat(manager.bytes("/manager/name/sound").statusCode()).isEqualTo(404);
	}

	@Test
	void aProtestIsHeardWithinItsTimeAndTheTeamSeesWhatBecomesOfIt() {
		this.day = SmallCompetition.running(this.context, 2, CompetitionFixtures.anEvent("Junior", 3));
		this.team = this.day.entries().get(0);
		Visitor manager = manager();
		String path = "/manager/protests/" + this.day.segment(1);
		assertThat(manager.open(path).text()).contains("The segment has not begun.");
		this.day.open(1);
		this.day.skateRest(1);
		assertThat(manager.open(path).text()).contains("No result is posted yet");
		ResultPublication publication = this.context.getBean(ResultPublication.class);
		publication.post(this.day.segment(1),
				this.context.getBean(Standings.class).result(this.day.segment(1)).orElseThrow().version(), REFEREE);
		Visitor.Page form = manager.open(path);
		assertThat(form.document().select("[data-left]")).hasSize(2);
		assertThat(form.text()).contains("min left");
		Visitor.Page refused = form.submit("form.sheet", Map.of("category", "CONDUCT", "text", "The light went out."));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.document().selectFirst("#text").text()).isEqualTo("The light went out.");
		assertThat(refused.submit("form.sheet", Map.of("filedBy", "Nell Thaw")).text())
			.contains("The protest is handed in.", "The light went out.", "waits for the referee");
		assertThat(
				form.submit("form.sheet", Map.of("category", "EVALUATION", "text", "Too low.", "filedBy", "Nell Thaw"))
					.text())
			.contains("not heard");
		assertThat(manager.open("/manager").text()).contains("Your times and results", "place");
	}

	@Test
	void contactsAreWrittenDownAndTakenOff() {
		Visitor manager = manager();
		Visitor.Page refused = manager.open("/manager/contacts")
			.submit("form.sheet", Map.of("name", "Nell Thaw", "phone", "by bell"));
		assertThat(refused.text()).contains("is no telephone number");
		assertThat(refused.document().selectFirst("#name").attr("value")).isEqualTo("Nell Thaw");
		Visitor.Page added = refused.submit("form.sheet", Map.of("phone", "040 1234", "kind", "EMERGENCY"));
		assertThat(added.text()).contains("Nell Thaw", "in an emergency");
		assertThat(manager.open("/manager").text()).doesNotContain("Nobody is known who is called in an emergency.");
		assertThat(added.submit("form[action$=/removal]", Map.of()).text()).contains("Nobody is written down yet.");
	}

	@Test
	void aTeamThatWithdrewChangesNothing() {
		Visitor manager = manager();
		Visitor.Page form = manager.open("/manager/roster");
		this.context.getBean(Entries.class).withdraw(this.team.id(), this.team.version(), "Ill.", SECRETARY);
		assertThat(form.submit("form[action$=/roster]", Map.of("givenName", "Aila", "familyName", "Rime")).text())
			.contains("Your team has withdrawn");
		assertThat(own()).isEmpty();
		assertThat(manager.open("/manager").text()).contains("withdrawn");
	}

	@Test
	void aPersonStaysSignedInBesideTheLink() {
		Visitor both = Crew.visitor(this.context, Role.SECRETARY);
		assertThat(both.open("/manager/roster").path()).as("a person is nobody there").isEqualTo("/manager");
		both.open("/manager").submit("#open", Map.of("token", token()));
		assertThat(both.open("/manager/roster").path()).isEqualTo("/manager/roster");
		assertThat(both.open("/desk").status()).isEqualTo(200);
		both.open("/manager").submit("form[action$=/leave]", Map.of());
		assertThat(both.open("/manager/roster").path()).isEqualTo("/manager");
		assertThat(both.open("/desk").path()).isEqualTo("/desk");
	}

	private List<RosterView.Place> own() {
		return this.context.getBean(Rosters.class).of(this.team.id()).places();
	}

	private Visitor.Page add(Visitor manager, String given, String born) {
		return manager.open("/manager/roster")
			.submit("form[action$=/roster]", Map.of("givenName", given, "familyName", this.family, "birthDate", born));
	}

	private void deadlines(Instant rosters, Instant music) {
		EventEligibility eligibility = this.context.getBean(EventEligibility.class);
		RulesView rules = eligibility.of(this.day.event().id());
		eligibility.set(new EventEligibility.SetRules(this.day.event().id(), "", rules.rules(), rules.whenFewer(),
				rosters, rules.version()), SECRETARY);
		this.context.getBean(MusicDeadlines.class).set(this.day.competition().id(), 0, music, SECRETARY);
	}

	private String tokenShown = "";

	private String token() {
		this.tokenShown = this.context.getBean(TeamsLinks.class)
			.give(this.day.competition().id(), this.team.id(), SECRETARY);
		return this.tokenShown;
	}

	private Visitor manager() {
		token();
		return again();
	}

	/** Somebody else with the same link. */
	private Visitor again() {
		Visitor manager = new Visitor(this.port);
		manager.open("/manager").submit("#open", Map.of("token", this.tokenShown));
		return manager;
	}

	private long lines(String action) {
		return this.database.sql("select count(*) from record_line where action = ? and subject_id = ?")
			.param(action)
			.param(this.team.id().toString())
			.query(Long.class)
			.single();
	}

}
