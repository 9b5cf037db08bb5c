package rimebook.audit;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

import rimebook.testsupport.EarlierCorrections;

import static org.assertj.core.api.Assertions.assertThat;

/** A database in which corrections were proposed before they were amendments. */
class EarlierCorrectionsIntegrationTests {

	private static final String ROW = """
			insert into correction (id, version, segment_id, performance_id, proposed_at, line, old_first, old_second,
			new_first, new_second, old_value, new_value, old_text, new_text, reason, state, proposed_by, decided_by,
			decision_reason)
			values (?, 0, ?, ?, current_timestamp, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'Slip.', 'PROPOSED', 'Ines Harrow', '', '')""";

	private final DriverManagerDataSource database = database();

	private final JdbcClient sql = JdbcClient.create(this.database);

	private final UUID segment = UUID.randomUUID();

	private final UUID performance = UUID.randomUUID();

	/** An empty database. */
	DriverManagerDataSource database() {
		return new DriverManagerDataSource("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
	}

	/** The folder of its own migrations. */
	String vendor() {
		return "h2";
	}

	@Test
	void areCarriedOverAndStillAttestedByTheirLines() throws SQLException {
		migrate("117");
		performance();
		List<UUID> ids = EarlierCorrections.all().stream().map(this::correction).toList();
		migrate("latest");
		for (int i = 0; i < ids.size(); i++) {
			assertThat(amendment(ids.get(i))).isEqualTo(EarlierCorrections.all().get(i).amendment());
		}
		assertThat(altered()).isEmpty();
		for (UUID id : ids) {
			String before = amendment(id);
			write("update correction set amendment = ? where id = ?", before.replace("after", "atter"), id);
			assertThat(altered())
				.containsExactly("Correction " + id + " is not stored as it was before corrections were amendments.");
			write("update correction set amendment = ? where id = ?", before, id);
		}
	}

	@Test
	void theLineOfACorrectionAttestsItAsItWas() throws SQLException {
		migrate("117");
		performance();
		UUID id = correction(EarlierCorrections.all().get(0));
		String attested = ChainDigest.of(ChainDigest.of(earlier(id)));
		migrate("latest");
		try (Connection connection = this.database.getConnection()) {
			assertThat(Evidence.of(connection, "correction", id.toString())).isEqualTo(attested);
			write("update correction set carried = false where id = ?", id);
			assertThat(Evidence.of(connection, "correction", id.toString())).isNotEqualTo(attested);
		}
	}

	/** The columns that were attested then, as the service wrote them. */
	private String[] earlier(UUID id) {
		return this.sql.sql("""
				select 'correction', id, segment_id, performance_id, seat_id, protest_id, line, old_first, old_second,
				new_first, new_second, old_value, new_value, old_text, new_text, reason, state, proposed_by,
				proposed_at, decided_by, decided_at, decision_reason from correction where id = ?""")
			.param(id)
			.query((row, at) -> {
				List<String> fields = new ArrayList<>();
				for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
					String text = (column == 19)
							? ChainDigest.time(row.getObject(column, java.time.OffsetDateTime.class).toInstant())
							: row.getString(column);
					fields.add((text != null) ? text : "");
				}
				return fields.toArray(String[]::new);
			})
			.single();
	}

	private List<String> altered() throws SQLException {
		try (Connection connection = this.database.getConnection()) {
			return StoredCheck.check(connection).faults();
		}
	}

	private String amendment(UUID id) {
		return this.sql.sql("select amendment from correction where id = ?").param(id).query(String.class).single();
	}

	private UUID correction(EarlierCorrections earlier) {
		UUID id = UUID.randomUUID();
		List<Object> values = new ArrayList<>(List.of(id, this.segment, this.performance));
		values.addAll(earlier.columns());
		write(ROW, values.toArray());
		return id;
	}

	private void migrate(String target) {
		Flyway.configure()
			.dataSource(this.database)
			.locations("classpath:db/migration/common", "classpath:db/migration/" + vendor())
			.target(target)
			.load()
			.migrate();
	}

	private void performance() {
		UUID competition = UUID.randomUUID();
		UUID event = UUID.randomUUID();
		UUID club = UUID.randomUUID();
		UUID team = UUID.randomUUID();
		UUID entry = UUID.randomUUID();
		write("insert into competition (id, version, slug, name, place, zone, first_day, last_day, rulebook, state) "
				+ "values (?, 0, 'one', 'One', 'Ebbhaven', 'UTC', '2027-02-13', '2027-02-13', 'ours', 'RUNNING')",
				competition);
		write("insert into event (id, version, competition_id, position, slug, name, method, judges, even_panel_reason, "
				+ "policies) values (?, 0, ?, 1, 'junior', 'Junior', 'MAJORITY', 3, '', '{}')", event, competition);
		write("insert into segment (id, version, event_id, position, slug, name, kind, factor, programme_seconds, "
				+ "tolerance_seconds) values (?, 0, ?, 1, 'free', 'Free skating', 'FREE', 100, 240, 10)", this.segment,
				event);
		write("insert into club (id, version, name, town) values (?, 0, 'North Quay', 'Ebbhaven')", club);
		write("insert into team (id, version, club_id, name, spoken_as) values (?, 0, ?, 'Embers', '')", team, club);
		write("insert into entry (id, version, event_id, team_id, state, late_reason, entered_at, withdrawn_reason) "
				+ "values (?, 0, ?, ?, 'ENTERED', '', current_timestamp, '')", entry, event, team);
		write("insert into performance (id, version, segment_id, entry_id, start_number, group_number, status, "
				+ "status_reason) values (?, 0, ?, ?, 1, 1, 'CLOSED', '')", this.performance, this.segment, entry);
	}

	private void write(String statement, Object... values) {
		this.sql.sql(statement).params(values).update();
	}

}
