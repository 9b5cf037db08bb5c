package rimebook.draw;

import java.util.List;
import java.util.UUID;

import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Orders that were drawn before the texts of their tickets were kept. */
class EarlierTicketTextsIntegrationTests {

	private static final List<String> TEAMS = List.of("Embers", "A\u030asvind", "O'Hara's Row");

	private final DriverManagerDataSource database = database();

	private final JdbcClient sql = JdbcClient.create(this.database);

	private final UUID order = UUID.randomUUID();

	/** An empty database. */
	DriverManagerDataSource database() {
		return new DriverManagerDataSource("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
	}

	/** The folder of its own migrations. */
	String vendor() {
		return "h2";
	}

	@Test
	void getTheTextThatGivesTheirTicketAndStayUnchangeable() {
		migrate("115?");
		draw();
		migrate("latest");
		assertThat(this.sql.sql("select ticket, ticket_text from start_position order by number")
			.query((row, at) -> new DrawTicket(row.getString("ticket_text")).hex().equals(row.getString("ticket"))
					? row.getString("ticket_text") : "differs")
			.list()).containsExactly("seed|Free skating|Embers|North Quay", "seed|Free skating|\u00c5svind|North Quay",
					"seed|Free skating|O'Hara's Row|North Quay");
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.sql.sql("update start_position set ticket_text = 'another'").update());
	}

	private void migrate(String target) {
		Flyway.configure()
			.dataSource(this.database)
			.locations("classpath:db/migration/common", "classpath:db/migration/" + vendor())
			.target(target)
			.load()
			.migrate();
	}

	private void draw() {
		UUID competition = UUID.randomUUID();
		UUID event = UUID.randomUUID();
		UUID segment = UUID.randomUUID();
		UUID club = UUID.randomUUID();
		write("insert into competition (id, version, slug, name, place, zone, first_day, last_day, rulebook, state) "
				+ "values (?, 0, 'one', 'One', 'Ebbhaven', 'UTC', '2027-02-13', '2027-02-13', 'ours', 'RUNNING')",
				competition);
		write("insert into event (id, version, competition_id, position, slug, name, method, judges, even_panel_reason, "
				+ "policies) values (?, 0, ?, 1, 'junior', 'Junior', 'MAJORITY', 3, '', '{}')", event, competition);
		write("insert into segment (id, version, event_id, position, slug, name, kind, factor, programme_seconds, "
				+ "tolerance_seconds) values (?, 0, ?, 1, 'free', 'Free skating', 'FREE', 100, 240, 10)", segment,
				event);
		write("insert into club (id, version, name, town) values (?, 0, 'North Quay', 'Ebbhaven')", club);
		write("insert into starting_order (id, segment_id, number, method, seed, group_maximum, drawn_at, drawn_by, "
				+ "reason) values (?, ?, 1, 'WHOLE_FIELD', 'seed', 4, current_timestamp, 'Ines Harrow', '')",
				this.order, segment);
		for (int number = 1; number <= TEAMS.size(); number++) {
			start(number, event, club);
		}
	}

	private void start(int number, UUID event, UUID club) {
		UUID team = UUID.randomUUID();
		UUID entry = UUID.randomUUID();
		String name = TEAMS.get(number - 1);
		write("insert into team (id, version, club_id, name, spoken_as) values (?, 0, ?, ?, '')", team, club, name);
		write("insert into entry (id, version, event_id, team_id, state, late_reason, entered_at, withdrawn_reason) "
				+ "values (?, 0, ?, ?, 'ENTERED', '', current_timestamp, '')", entry, event, team);
		write("insert into start_position (order_id, number, group_number, entry_id, ticket) values (?, ?, 1, ?, ?)",
				this.order, number, entry, DrawTicket.of("seed", "Free skating", name, "North Quay").hex());
	}

	private void write(String statement, Object... values) {
		this.sql.sql(statement).params(values).update();
	}

}
