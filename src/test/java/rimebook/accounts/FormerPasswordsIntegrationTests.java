package rimebook.accounts;

import java.util.Set;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class FormerPasswordsIntegrationTests {

	private static final String LAST_FIVE = "That is one of the last 5 passwords of this account";

	private static final Actor OFFICE = new Actor("person:office", "Office", "administrator", "test");

	@Autowired
	private People people;

	@Autowired
	private JdbcClient database;

	private PersonView.Id person;

	private Actor self;

	@BeforeEach
	void somebodyWithAPasswordOfTheirOwn() {
		String name = "f" + UUID.randomUUID().toString().substring(0, 8);
		this.person = this.people
			.add(new DraftPerson(name, "Former " + name, Set.of(Role.ANNOUNCER), own(0)), Actor.system())
			.id();
		this.self = new Actor("person:" + this.person, "Former " + name, "announcer", "test");
	}

	@Test
	void theLastFivePasswordsOfOnesOwnAreNotUsedAgain() {
		for (int next = 1; next <= 5; next++) {
			this.people.choosePassword(this.person, own(next), this.self);
		}
		for (int former = 0; former <= 4; former++) {
			assertRefused(own(former), LAST_FIVE);
		}
		assertRefused(own(5), "That is the password already in use");
		this.people.choosePassword(this.person, own(6), this.self);
		assertThat(digests()).isEqualTo(5);
		this.people.choosePassword(this.person, own(0), this.self);
	}

	@Test
	void whatTheOfficeChoosesIsNotKeptAndHidesNothing() {
		this.people.setPassword(this.person, "lent by the office", OFFICE);
		assertThat(digests()).isEqualTo(1);
		assertRefused(own(0), LAST_FIVE);
		this.people.choosePassword(this.person, own(1), this.self);
		assertThat(digests()).as("the lent one is none of their own").isEqualTo(1);
	}

	private void assertRefused(String password, String sentence) {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.people.choosePassword(this.person, password, this.self))
			.withMessageStartingWith(sentence)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("password-repeated"));
	}

	private int digests() {
		return this.database.sql("select count(*) from former_password where person_id = ? and password_hash like '{%'")
			.param(this.person.value())
			.query(Integer.class)
			.single();
	}

	private static String own(int number) {
		return "kettle drum on lake " + number;
	}

}
