package rimebook.accounts.web;

import java.util.Map;
import java.util.Set;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.PersonView;
import rimebook.accounts.Role;
import rimebook.shared.Actor;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
class OwnPasswordIntegrationTests {

	private static final String GIVEN = "lent by the office for a day";

	private static final String OWN = "kettle drum on the far lake";

	private static final String FORM = "form[action=/desk/own-password]";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private People people;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private String name;

	private PersonView person;

	@BeforeEach
	void anAdministratorMadeAnAccount() {
		this.name = "o" + UUID.randomUUID().toString().substring(0, 8);
		Visitor office = Crew.visitor(this.context, Role.ADMINISTRATOR);
		Visitor.Page added = office.open("/desk/people/new")
			.submit("main form", Map.of("signInName", this.name, "displayName", "Owner " + this.name, "roles",
					Role.REFEREE.name(), "password", GIVEN));
		assertThat(added.text()).contains("chooses a password of their own first");
		this.person = this.people.all()
			.stream()
			.filter((one) -> one.signInName().equals(this.name))
			.findFirst()
			.orElseThrow();
	}

	@Test
	void nothingIsDoneBeforeAPasswordOfOnesOwnIsChosen() {
		Visitor referee = Visitor.signedIn(this.port, this.name, GIVEN);
		for (String path : new String[] { "/desk", "/desk/competitions", "/desk/record" }) {
			assertThat(referee.open(path).path()).isEqualTo("/desk/own-password");
		}
		Visitor.Page signIn = change(referee, GIVEN, OWN, OWN);
		assertThat(signIn.path()).isEqualTo("/sign-in");
		assertThat(signIn.text()).contains("Your password is changed.");
		assertThat(referee.open("/desk").path()).isEqualTo("/sign-in");
		assertThat(Visitor.signedIn(this.port, this.name, GIVEN).open("/desk").path()).isEqualTo("/sign-in");
		assertThat(Visitor.signedIn(this.port, this.name, OWN).open("/desk/competitions").path())
			.isEqualTo("/desk/competitions");
		assertThat(record()).contains("person.password-chosen");
	}

	@Test
	void whoIsNotWillingStaysThere() {
		Visitor referee = Visitor.signedIn(this.port, this.name, GIVEN);
		assertThat(change(referee, "not the one in use", OWN, OWN).text()).contains("That is not your password.");
		assertThat(change(referee, GIVEN, OWN, OWN + "s").text()).contains("The two new passwords differ");
		assertThat(change(referee, GIVEN, GIVEN, GIVEN).text()).contains("That is the password already in use");
		assertThat(change(referee, GIVEN, "password1234", "password1234").text()).contains("Many people choose");
		Visitor.Page last = change(referee, GIVEN, "short", "short");
		assertThat(last.status()).isEqualTo(422);
		assertThat(last.document().html()).doesNotContain(GIVEN);
		assertThat(referee.open("/desk").path()).isEqualTo("/desk/own-password");
	}

	/** Somebody else knows it again. */
	@Test
	void aPasswordSetByAnAdministratorIsReplacedToo() {
		change(Visitor.signedIn(this.port, this.name, GIVEN), GIVEN, OWN, OWN);
		Visitor office = Crew.visitor(this.context, Role.ADMINISTRATOR);
		office.open("/desk/people/" + this.person.id() + "/password").submit("main form", Map.of("password", GIVEN));
		assertThat(Visitor.signedIn(this.port, this.name, GIVEN).open("/desk").path()).isEqualTo("/desk/own-password");
	}

	@Test
	void everySessionEndsWithTheOldPassword() {
		this.people.add(new DraftPerson("e" + this.name, "Else " + this.name, Set.of(Role.REFEREE), GIVEN),
				Actor.system());
		Visitor here = Visitor.signedIn(this.port, "e" + this.name, GIVEN);
		Visitor there = Visitor.signedIn(this.port, "e" + this.name, GIVEN);
		assertThat(there.open("/desk").document().select("a[href=/desk/own-password]").text())
			.isEqualTo("Else " + this.name);
		change(here, GIVEN, OWN, OWN);
		assertThat(there.open("/desk").path()).isEqualTo("/sign-in");
	}

	@Test
	void guessingAtItIsStopped() {
		Visitor referee = Visitor.signedIn(this.port, this.name, GIVEN);
		int tries = 0;
		while (change(referee, "guess number " + tries, OWN, OWN).status() == 422 && tries < 20) {
			tries++;
		}
		assertThat(tries).isBetween(9, 12);
		assertThat(record().split("person.password-wrong", -1)).as("the 1st, 2nd, 5th and 10th").hasSizeBetween(4, 5);
	}

	private static Visitor.Page change(Visitor visitor, String current, String password, String again) {
		return visitor.open("/desk/own-password")
			.submit(FORM, Map.of("current", current, "password", password, "again", again));
	}

	private String record() {
		return String.join(" ",
				this.database.sql("select action from record_line where subject_id = :id")
					.param("id", this.person.id().toString())
					.query(String.class)
					.list());
	}

}
