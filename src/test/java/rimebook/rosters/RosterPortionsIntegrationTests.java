package rimebook.rosters;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

/** Files that are written and people who are forgotten a portion after the other. */
@WholeApplication
class RosterPortionsIntegrationTests {

	private static final Actor SECRETARY = SmallCompetition.SECRETARY;

	private static final String HEADER = "event,team,given_name,family_name,birth_date\n";

	private static final IntConsumer NOBODY = (done) -> {
	};

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RosterImport files;

	@Autowired
	private Rosters rosters;

	@Autowired
	private Skaters skaters;

	@Autowired
	private Retention retention;

	@Autowired
	private RecordVerification record;

	@Autowired
	private JdbcClient database;

	private SmallCompetition small;

	private CompetitionId id;

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

	/** Nobody has to wait until a whole file is written, at the door least of all. */
	@Test
	void whoSignsInWhileAFileIsWrittenGetsIn() throws Exception {
		String name = Crew.add(this.context, Role.SECRETARY);
		CountDownLatch begun = new CountDownLatch(1);
		CompletableFuture<RosterImport.Outcome> writing = CompletableFuture
			.supplyAsync(() -> apply(csv(0, 800, "2011-03-09"), Set.of(), (done) -> begun.countDown()));
		assertThat(begun.await(60, TimeUnit.SECONDS)).isTrue();
		int signedIn = 0;
		long longest = 0;
		while (!writing.isDone()) {
			long began = System.nanoTime();
			Visitor.Page desk = Crew.signIn(this.context, name).open("/desk");
			longest = Math.max(longest, System.nanoTime() - began);
			assertThat(desk.status()).isEqualTo(200);
			assertThat(desk.path()).isEqualTo("/desk");
			signedIn++;
		}
		System.out.println(signedIn + " sign-ins while 700 rows were written, the slowest took "
				+ TimeUnit.NANOSECONDS.toMillis(longest) + " ms");
		assertThat(writing.get().people()).isEqualTo(800);
		assertThat(signedIn).isPositive();
		assertThat(TimeUnit.NANOSECONDS.toSeconds(longest)).isLessThan(8);
	}

	/** Without a birth date only the roster tells who is who. */
	@Test
	void aFileThatStoppedGoesOnAndPutsNobodyThereTwice() {
		for (int namesake = 0; namesake < 2; namesake++) {
			this.skaters.add(new DraftSkater(given(3), this.family, LocalDate.of(1990 + namesake, 1, 1), "", club()),
					SECRETARY);
		}
		String csv = csv(0, 250, "");
		Set<Integer> another = Set.of(5);
		assertThat(this.files.preview(this.id, csv, Set.of()).bad()).extracting(RosterRow::line).containsExactly(5);
		assertThat(this.files.preview(this.id, csv, another).bad()).isEmpty();
		assertThatIllegalStateException().isThrownBy(() -> apply(csv, another, (done) -> {
			throw new IllegalStateException("The power is gone");
		}));
		assertThat(onRosters()).isEqualTo(100);
		RosterImport.Preview again = this.files.preview(this.id, csv, another);
		assertThat(again.bad()).isEmpty();
		assertThat(again.good()).filteredOn((row) -> row.order().known() != null).hasSize(100);
		assertThat(apply(csv, another, NOBODY)).isEqualTo(new RosterImport.Outcome(150, 150, 0, 0));
		assertThat(onRosters()).isEqualTo(250);
		assertThat(apply(csv, another, NOBODY)).isEqualTo(new RosterImport.Outcome(0, 0, 0, 0));
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void aTeamThatWithdrawsMeanwhileStopsTheRest() {
		EntryView last = this.small.entries().get(1);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> apply(csv(0, 250, ""), Set.of(),
					(done) -> this.context.getBean(Entries.class)
						.withdraw(last.id(), last.version(), "Too few.", SECRETARY)))
			.satisfies((refusal) -> {
				assertThat(refusal.code()).isEqualTo("rosters-changed");
				assertThat(refusal.sentence().english())
					.isEqualTo("Team 2 in line 127 withdrew while the file was being written.");
			});
		assertThat(onRosters()).isEqualTo(100);
	}

	@Test
	void peopleAreForgottenInPortionsThatAreToldOf() {
		apply(csv(0, 150, "2011-03-09"), Set.of(), NOBODY);
		this.retention.set(this.id, this.small.competition().facts().lastDay().plusDays(1), Retention.View.NONE,
				SECRETARY);
		this.database.sql("update roster_retention set delete_on = ? where competition_id = ?")
			.params(LocalDate.of(2020, 1, 1), this.id.value())
			.update();
		assertThat(this.retention.deletePortion(this.id)).isTrue();
		Retention.View half = this.retention.of(this.id).orElseThrow();
		assertThat(half.deletedAt()).isNull();
		assertThat(half.deleted()).isEqualTo(new Retention.Deleted(0, 0, 100));
		String page = Crew.visitor(this.context, Role.SECRETARY).open("/desk/rosters/retention/" + this.id).text();
		assertThat(page).contains("It has begun.").contains("everything of 100 people");
		this.retention.delete(this.id);
		Retention.View whole = this.retention.of(this.id).orElseThrow();
		assertThat(whole.deletedAt()).isNotNull();
		assertThat(whole.deleted()).isEqualTo(new Retention.Deleted(0, 0, 150));
		List<String> lines = this.database.sql("""
				select concat(action, ': ', after_text) from record_line
				where subject = 'retention' and subject_id = ? order by number""")
			.param(this.id.toString())
			.query(String.class)
			.list();
		assertThat(lines).hasSize(4)
			.last()
			.isEqualTo("retention.deleted: deleted: 0 contacts, birth date and number of 0 people, everything of 150 "
					+ "people");
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	private ClubView.Id club() {
		return this.small.entries().get(0).team().club().id();
	}

	private long onRosters() {
		return this.rosters.of(this.small.entries().stream().map(EntryView::id).toList())
			.values()
			.stream()
			.mapToLong((roster) -> roster.present().size())
			.sum();
	}

	/** The first half of the rows for one team, the second for the other. */
	private String csv(int from, int to, String born) {
		return HEADER + IntStream.range(from, to)
			.mapToObj((i) -> String.join(",", "Junior", (2 * i < to) ? "Team 1" : "Team 2", given(i), this.family, born)
					+ "\n")
			.collect(Collectors.joining());
	}

	private static String given(int number) {
		return "S" + Integer.toString(number + 1000, 26)
			.chars()
			.mapToObj((digit) -> String.valueOf((char) ('a' + Character.digit(digit, 26))))
			.collect(Collectors.joining());
	}

	private RosterImport.Outcome apply(String csv, Set<Integer> another, IntConsumer progress) {
		return this.files.apply(this.id, csv, new RosterImport.Answers(Set.of(), another), progress, SECRETARY);
	}

}
