package rimebook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What somebody with the keys of the database changes in what is stored, and not in the
 * record, is found. Lines are never deleted, so only what is new counts.
 */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:record;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=20000")
class StoredCheckIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RecordVerification verification;

	@Autowired
	private JdbcTemplate database;

	@Autowired
	private PlatformTransactionManager transactions;

	@Test
	void whatIsChangedBehindItsBackIsFoundAndNothingElse() {
		StoredCheck.Finding before = this.verification.compareStored();
		SmallCompetition points = PointsCompetition.running(this.context, 1, 3);
		points.open(1);
		points.skateRest(1);
		SmallCompetition day = SignedDay.of(this.context);
		StoredCheck.Finding after = this.verification.compareStored();
		assertThat(after.faults()).isEqualTo(before.faults());
		assertThat(after.signatures()).isEqualTo(before.signatures() + 2);
		assertThat(after.versions()).isGreaterThan(before.versions() + 4);
		assertThat(after.things()).as("cards, a correction and what was decided at desks")
			.isGreaterThan(before.things() + 20);
		assertThat(after.unattested()).isEqualTo(before.unattested());
		tampered(day, points).forEach((sql, fault) -> assertFound(sql, fault, after));
	}

	/** Lines about entries attested nothing once. */
	@Test
	void whatWasActedOnBeforeItsLinesAttestedAnythingIsCountedAndNoFault() {
		SmallCompetition day = SmallCompetition.running(this.context, 1, 3);
		StoredCheck.Finding before = this.verification.compareStored();
		this.database.execute(dropGuard("record_line"));
		try {
			StoredCheck.Finding found = found("update record_line set evidence = '' where subject = 'entry' "
					+ "and subject_id = '" + day.entries().get(0).id() + "'");
			assertThat(found.faults()).isEqualTo(before.faults());
			assertThat(found.unattested()).isEqualTo(before.unattested() + 1);
			assertThat(found.things()).isEqualTo(before.things() - 1);
			assertThat(found.sentence()).contains("attests what is stored, ", "not compared.");
		}
		finally {
			this.database.execute(createGuard("record_line"));
		}
	}

	private static Map<String, String> tampered(SmallCompetition day, SmallCompetition points) {
		String result = " where scope_id = '" + day.segment(1) + "' and number = 1";
		String card = " where performance_id = '" + day.performances(1).get(1).id() + "'";
		String sheet = " where performance_id = '" + points.performances(1).get(0).id() + "'";
		String signed = " where segment_id = '" + day.segment(1) + "'";
		return Map.ofEntries(
				Map.entry("update result_version set body = concat(body, ' ')" + result,
						"Version 1 of result " + day.segment(1) + ": its body was changed after it was published."),
				Map.entry("update result_version set note = 'other'" + result, "no line of the record tells of it"),
				Map.entry("update result_version set said = '{\"key\":\"note.takes-place\",\"arguments\":[\"Free\"]}'"
						+ result, "what it says in other languages is not what its line tells"),
				Map.entry("update result_version set state = 'OFFICIAL'" + result, "no line of the record tells of it"),
				Map.entry("delete from result_version" + result, "a published version that is not stored as it was"),
				Map.entry("update card_submission set first_mark = 600" + card, "another set of cards and lists"),
				Map.entry("delete from card_submission" + card, "another set of cards and lists"),
				Map.entry("update points_card set marks = '{}'" + sheet, "another set of cards and lists"),
				Map.entry("update called_list set called_by = 'Somebody'" + sheet, "another set of cards and lists"),
				Map.entry("update correction set decided_by = 'Somebody'" + signed, "attests another correction"),
				Map.entry("update correction set amendment = replace(amendment, '100', '110')" + signed,
						"attests another correction"),
				Map.entry("update correction set carried = true" + signed, "attests another correction"),
				Map.entry("update segment_result set referee_signature = 'Somebody'" + signed,
						"signed by Somebody as referee"),
				Map.entry("update segment_result set accountant_signature_id = 'person:other'" + signed,
						"as accountant"),
				Map.entry(
						"update segment_result set referee_signed_at = timestamp with time zone '2001-01-01 00:00:00+00'"
								+ signed,
						"as referee"),
				Map.entry("update segment_result set accountant_signature = ''" + signed,
						"official without both signatures"));
	}

	/** All of it is rolled back; what guards the table is away only meanwhile. */
	private void assertFound(String sql, String fault, StoredCheck.Finding before) {
		String table = sql.replaceAll("^(update|delete from) (\\w+).*", "$2");
		boolean guarded = !List.of("correction", "segment_result").contains(table);
		if (guarded) {
			this.database.execute(dropGuard(table));
		}
		try {
			List<String> found = new ArrayList<>(found(sql).faults());
			found.removeAll(before.faults());
			assertThat(found).as(sql).isNotEmpty().anySatisfy((one) -> assertThat(one).contains(fault));
		}
		finally {
			if (guarded) {
				this.database.execute(createGuard(table));
			}
		}
	}

	private StoredCheck.Finding found(String sql) {
		StoredCheck.Finding finding = new TransactionTemplate(this.transactions).execute((status) -> {
			assertThat(this.database.update(sql)).as(sql).isPositive();
			status.setRollbackOnly();
			return this.verification.compareStored();
		});
		assertThat(finding).isNotNull();
		return finding;
	}

	String createGuard(String table) {
		return "create trigger " + table + "_stays before update, delete on " + table + " for each row call '"
				+ AppendOnlyTrigger.class.getName() + "'";
	}

	String dropGuard(String table) {
		return "drop trigger " + table + "_stays";
	}

}
