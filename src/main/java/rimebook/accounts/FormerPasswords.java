package rimebook.accounts;

import java.util.List;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The last passwords of their own that people used before the one in use, as digests. A
 * password that somebody else chose is not kept.
 */
@Component
class FormerPasswords {

	/** How many are kept a person; older ones may be used again (common practice). */
	static final int KEPT = 5;

	private final JdbcClient database;

	private final PasswordEncoder passwords;

	FormerPasswords(JdbcClient database, PasswordEncoder passwords) {
		this.database = database;
		this.passwords = passwords;
	}

	/** Tell whether a password is one of those. */
	boolean include(PersonView.Id person, String password) {
		return digests(person).stream().anyMatch((digest) -> this.passwords.matches(password, digest));
	}

	/** Keep the digest of the password that is replaced now, and forget the oldest. */
	@Transactional(propagation = Propagation.MANDATORY)
	void keep(PersonView.Id person, String digest) {
		this.database.sql("select id from person where id = ? for update").param(person.value()).query().singleRow();
		this.database.sql("""
				insert into former_password (person_id, number, password_hash)
				values (:person, (select coalesce(max(number), 0) + 1 from former_password where person_id = :person),
				:digest)""").param("person", person.value()).param("digest", digest).update();
		this.database.sql("""
				delete from former_password where person_id = :person
				and number <= (select max(number) from former_password where person_id = :person) - :kept""")
			.param("person", person.value())
			.param("kept", KEPT)
			.update();
	}

	private List<String> digests(PersonView.Id person) {
		return this.database.sql("select password_hash from former_password where person_id = ? order by number")
			.param(person.value())
			.query((row, number) -> row.getString(1))
			.list();
	}

}
