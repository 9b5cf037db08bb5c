package rimebook.accounts;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;

import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class DoorRecordIntegrationTests {

	private static final String PASSWORD = "ice lantern rime book";

	@Autowired
	private DoorRecord record;

	@Autowired
	private OwnPassword own;

	@Autowired
	private CodeGuessing guessing;

	@Autowired
	private People people;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private PersonView person;

	private long before;

	@BeforeEach
	void somebodyNew() {
		forget();
		String name = "d" + UUID.randomUUID().toString().substring(0, 8);
		this.person = this.people.add(new DraftPerson(name, "Door " + name, Set.of(Role.ANNOUNCER), PASSWORD),
				Actor.system());
		this.before = lines();
	}

	/** What is counted here is counted for all tests of the day. */
	@AfterEach
	void forget() {
		this.database.sql("delete from attempt_tally where kind <> 'lock'").update();
		this.database.sql("delete from code_stop where address like '2001:db8:%'").update();
	}

	@Test
	void signInsFailuresAndRefusalsAreOnTheRecord() {
		Visitor visitor = new Visitor(this.port);
		visitor.open("/sign-in")
			.submit("form[action=/sign-in]", Map.of("signInName", this.person.signInName(), "password", "no"));
		Visitor.signedIn(this.port, this.person.signInName(), PASSWORD).open("/desk/people");
		assertThat(ofPerson()).containsSubsequence(
				"person.sign-in-failed: password of " + this.person.displayName() + " not known, the first time today",
				"person.signed-in: signed in", "person.refused: not let in at /desk/people, the first time today");
	}

	@Test
	void aWrongPasswordOfWhoIsSignedInIsOnTheRecord() {
		Actor self = new Actor("person:" + this.person.id(), this.person.displayName(), "announcer", "a tablet");
		SignedIn signedIn = new SignedIn(this.person, "", false, List.of());
		Authentication desk = UsernamePasswordAuthenticationToken.authenticated(signedIn, null, List.of());
		for (int i = 0; i < 3; i++) {
			assertThatExceptionOfType(RuleViolationException.class)
				.isThrownBy(() -> this.own.require(desk, "my neighbour's", self));
		}
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.own.change(desk, "guessed", "kettle drum on lake", "kettle drum on lake", self));
		this.own.require(desk, PASSWORD, self);
		assertThat(ofPerson()).filteredOn((line) -> line.startsWith("person.password-wrong"))
			.containsExactly("person.password-wrong: wrong password for a signature, the first time today",
					"person.password-wrong: wrong password for a signature, 2 times today");
		assertThat(this.database.sql("select times from attempt_tally where subject = ?")
			.param(this.person.id().toString())
			.query(Integer.class)
			.single()).isEqualTo(4);
		assertThat(this.database.sql("select distinct actor_id from record_line where action = ? and subject_id = ?")
			.params("person.password-wrong", this.person.id().toString())
			.query(String.class)
			.list()).containsExactly(self.id());
	}

	@Test
	void aPasswordTypedAsANameIsNotWrittenDown() {
		this.record.failed("my secret password", "203.0.113.9", "203.0.113.9, Firefox");
		assertThat(this.database.sql("select after_text from record_line where number > :before")
			.param("before", this.before)
			.query(String.class)
			.list()).containsExactly("name that nobody has, the first time today");
	}

	@Test
	void whoGuessesAtAnAccountAllDayAddsAFewLines() {
		for (int i = 0; i < 500; i++) {
			this.record.failed(this.person.signInName(), "2001:db8:" + i + "::/64", "somewhere");
		}
		assertThat(lines() - this.before).as("1, 2, 5, ... 500").isEqualTo(9);
		assertThat(ofPerson()).endsWith(
				"person.sign-in-failed: password of " + this.person.displayName() + " not known, 500 times today");
		assertThat(rows()).isEqualTo(1);
	}

	@Test
	void whoGuessesNamesFromManyPlacesFillsNoTable() {
		for (int i = 0; i < 700; i++) {
			this.record.failed("name" + i, "2001:db8:" + i + "::/64", "somewhere");
			this.record.stopped("2001:db8:" + i + "::/64", "somewhere");
		}
		int each = AttemptTally.MOST_SUBJECTS + "1 2 5 10 20 50 100 200 500".split(" ").length;
		assertThat(lines() - this.before).isEqualTo(2L * each);
		assertThat(rows()).isEqualTo(2L * (AttemptTally.MOST_SUBJECTS + 1));
	}

	@Test
	void whoGuessesSeatCodesFromManyPlacesFillsNoTable() {
		for (int i = 0; i < CodeGuessing.MOST_KEPT + 50; i++) {
			this.guessing.stop("2001:db8:" + i + "::/64", "somewhere");
		}
		assertThat(this.database.sql("select count(*) from code_stop").query(Integer.class).single())
			.isEqualTo(CodeGuessing.MOST_KEPT);
		assertThat(lines() - this.before).isLessThan(AttemptTally.MOST_SUBJECTS + 12L);
		assertThat(this.guessing.door("2001:db8:" + (CodeGuessing.MOST_KEPT + 49) + "::/64").pause()).isPositive();
	}

	@Test
	void aNewDayBeginsAnew() {
		this.record.failed(this.person.signInName(), "here", "somewhere");
		this.database.sql("update attempt_tally set counted_on = date '2026-01-02', times = 8 where kind <> 'lock'")
			.update();
		this.record.failed(this.person.signInName(), "here", "somewhere");
		assertThat(ofPerson()).endsWith(
				"person.sign-in-failed: password of " + this.person.displayName() + " not known, the first time today");
		assertThat(rows()).isEqualTo(1);
	}

	private long lines() {
		return this.database.sql("select max(number) from record_line").query(Long.class).single();
	}

	private long rows() {
		return this.database.sql("select count(*) from attempt_tally where kind <> 'lock'").query(Long.class).single();
	}

	private List<String> ofPerson() {
		return this.database
			.sql("select action || ': ' || after_text from record_line where subject_id = :id order by number")
			.param("id", this.person.id().toString())
			.query(String.class)
			.list();
	}

}
