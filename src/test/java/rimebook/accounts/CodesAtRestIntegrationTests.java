package rimebook.accounts;

import java.util.List;
import java.util.Objects;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.shared.Actor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** Whoever has a copy of the database has no code of any seat. */
@WholeApplication
class CodesAtRestIntegrationTests {

	@Autowired
	private SeatCodes codes;

	@Autowired
	private CodesInTheClear former;

	@Autowired
	private JdbcClient database;

	private final UUID seat = UUID.randomUUID();

	@Test
	void onlyTheDigestOfACodeIsStored() {
		String code = issue();
		assertThat(row()).doesNotContain(code);
		assertThat(digest()).matches("[0-9a-f]{64}").isNotEqualTo(SecretTokens.digest(code));
		assertThat(shownCode()).isEqualTo(code);
		SeatCodes.Pairing tablet = this.codes.pair(code.substring(0, 4).toLowerCase() + " " + code.substring(4), "a",
				null);
		assertThat(tablet.seat().seat()).isEqualTo(this.seat);
		assertThat(shownCode()).isNull();
		assertThat(this.codes.hasCode(this.seat)).isTrue();
	}

	@Test
	void whatWasKeptInTheClearBeforeIsReplacedAndItsSlipIsStillGood() {
		String code = issue();
		String digest = digest();
		this.database.sql("update seat_code set code = ?, code_digest = null where seat_id = ?")
			.params(code, this.seat)
			.update();
		this.former.afterPropertiesSet();
		assertThat(row()).doesNotContain(code);
		assertThat(digest()).isEqualTo(digest);
		this.former.afterPropertiesSet();
		assertThat(this.codes.pair(code, "a tablet", null).seat().seat()).isEqualTo(this.seat);
	}

	private @Nullable String shownCode() {
		return Objects.requireNonNull(this.codes.accessTo(List.of(this.seat)).get(this.seat)).shownCode();
	}

	private String issue() {
		return this.codes.issue(this.seat, "Judge 3, Adult", Actor.system());
	}

	private String row() {
		return this.database.sql("select * from seat_code where seat_id = ?")
			.param(this.seat)
			.query()
			.singleRow()
			.toString();
	}

	private String digest() {
		return this.database.sql("select code_digest from seat_code where seat_id = ?")
			.param(this.seat)
			.query(String.class)
			.single();
	}

}
