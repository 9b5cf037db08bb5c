package rimebook.audit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.entries.Entries;
import rimebook.entries.EnterTeam;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarksAmendment;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.ResultPublication;
import rimebook.results.Standings;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** Whatever people do reads by names on the record, in the time of their rink. */
@WholeApplication
class RecordNamesIntegrationTests {

	private static final String IDENTITY = "(?s).*[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}.*";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RecordReading reading;

	@Autowired
	private RecordNames names;

	@Test
	void everyKindOfThingHasANameAndTheTimeOfItsRink() {
		long before = this.reading.read(RecordReading.Query.of("", "", 1)).found();
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		enterANewClub();
		Crew.add(this.context, Role.REFEREE);
		day.open(1);
		day.skateRest(1);
		post(day);
		protestAndCorrect(day);
		List<ReadableLine> lines = since(before);
		Set<String> subjects = lines.stream().map((read) -> read.line().thing().subject()).collect(Collectors.toSet());
		assertThat(subjects).contains("competition", "event", "club", "team", "entry", "official", "seat", "person",
				"starting-order", "segment", "performance", "result", "protest", "correction");
		assertThat(lines).allSatisfy((read) -> {
			assertThat(read.name()).as(read.line().toString())
				.isNotBlank()
				.doesNotContain(read.line().thing().subjectId() + " ");
			assertThat(read.before() + read.after() + read.reason()).doesNotMatch(IDENTITY);
		});
		PerformanceView first = day.performances(1).get(0);
		assertThat(lines).filteredOn((read) -> read.line().thing().subjectId().equals(first.id().toString()))
			.isNotEmpty()
			.allSatisfy((read) -> {
				assertThat(read.name()).matches("No\\. 1 Team [12], Junior, .+, " + day.competition().name());
				assertThat(read.zone()).isEqualTo(day.competition().zone());
			});
	}

	@Test
	void whatIsGoneIsReadAllTheSame() {
		RecordLine line = new RecordLine(new RecordLine.Link(1, 2, "", ""), Instant.EPOCH,
				new RecordLine.Who("Rune Frost", "person:1", "referee", "test"),
				new RecordLine.Thing("event", UUID.randomUUID().toString(), ""),
				new RecordLine.Change("event.removed", "Junior", "", ""));
		ReadableLine read = this.names.of(List.of(line)).get(0);
		assertThat(read.name()).isEmpty();
		assertThat(read.before()).isEqualTo("Junior");
		assertThat(read.zone()).isEqualTo(this.names.zone());
	}

	/** Helsinki is two hours ahead in winter and three in summer. */
	@Test
	void momentsInsideTextsAreToldByTheRinksClock() {
		SmallCompetition day = SmallCompetition.running(this.context, 1, 3);
		RecordLine line = new RecordLine(new RecordLine.Link(1, 2, "", ""), Instant.EPOCH,
				new RecordLine.Who("Rune Frost", "person:1", "referee", "test"),
				new RecordLine.Thing("event", day.event().id().toString(), ""),
				new RecordLine.Change("protest.confirmed",
						"handed in at 2027-02-13T22:30:05.123Z, as Bo Tally wrote down", "from 2027-07-01T10:00:00Z on",
						"no moment: 2027-99-13T22:30:05Z"));
		ReadableLine read = this.names.of(List.of(line)).get(0);
		assertThat(read.before()).isEqualTo("handed in at 14 February 2027, 00:30:05 EET, as Bo Tally wrote down");
		assertThat(read.after()).isEqualTo("from 1 July 2027, 13:00:00 EEST on");
		assertThat(read.reason()).isEqualTo("no moment: 2027-99-13T22:30:05Z");
		assertThat(read.isShortened()).isTrue();
		assertThat(read.line().change().before()).contains("2027-02-13T22:30:05.123Z");
	}

	private void enterANewClub() {
		SmallCompetition open = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Senior", 3));
		this.context.getBean(Entries.class)
			.enter(new EnterTeam(open.event().id(), "Club " + UUID.randomUUID().toString().replace("-", ""), "Town",
					"Newcomers", "", ""), SmallCompetition.SECRETARY);
	}

	private void post(SmallCompetition day) {
		this.context.getBean(ResultPublication.class)
			.post(day.segment(1), this.context.getBean(Standings.class).result(day.segment(1)).orElseThrow().version(),
					SmallCompetition.ACCOUNTANT);
	}

	private void protestAndCorrect(SmallCompetition day) {
		this.context.getBean(Protests.class)
			.file(new Protests.FileProtest(day.segment(1), new ProtestView.Claim(day.entries().get(0).id(),
					ProtestView.ProtestCategory.CALCULATION, "A sum is wrong.", 0), "Mira Sund", null),
					SmallCompetition.ACCOUNTANT);
		Corrections corrections = this.context.getBean(Corrections.class);
		CorrectionView proposed = corrections.propose(
				new Corrections.ProposeCorrection(MarksAmendment.on(day.performances(1).get(0).id(),
						day.seats().get(0).id(), new CardMarks(100, 100)), "Typed one key off."),
				SmallCompetition.ACCOUNTANT);
		corrections.reject(proposed.id(), proposed.version(), "The paper says otherwise.", SmallCompetition.REFEREE);
	}

	private List<ReadableLine> since(long before) {
		List<ReadableLine> lines = new ArrayList<>();
		for (int page = 1;; page++) {
			RecordReading.Page read = this.reading.read(RecordReading.Query.of("", "", page));
			lines.addAll(this.names.of(read.lines()));
			if (page >= read.pages() || read.lines().stream().anyMatch((line) -> line.number() <= before)) {
				return lines.stream().filter((line) -> line.line().number() > before).toList();
			}
		}
	}

}
