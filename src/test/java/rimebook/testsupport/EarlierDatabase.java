package rimebook.testsupport;

import java.util.UUID;

import javax.sql.DataSource;

import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/**
 * A database as an earlier version of the service left it: brought up to one of its
 * migrations, with rows as they were written then, and later brought up to date.
 */
public final class EarlierDatabase {

	private final DataSource source;

	private final String vendor;

	private final JdbcClient sql;

	private EarlierDatabase(DataSource source, String vendor) {
		this.source = source;
		this.vendor = vendor;
		this.sql = JdbcClient.create(source);
	}

	/** An empty one. */
	public static EarlierDatabase onH2() {
		return new EarlierDatabase(
				new DriverManagerDataSource("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", ""), "h2");
	}

	/** An empty one. */
	public static EarlierDatabase onPostgres() {
		PostgresDatabase database = PostgresDatabase.create();
		return new EarlierDatabase(
				new DriverManagerDataSource(database.url(), database.username(), database.password()), "postgresql");
	}

	/** For those who open connections of their own. */
	public DataSource source() {
		return this.source;
	}

	/** For questions. */
	public JdbcClient sql() {
		return this.sql;
	}

	/** Bring it up to that migration, or to {@code latest}. */
	public void migrate(String target) {
		Flyway.configure()
			.dataSource(this.source)
			.locations("classpath:db/migration/common", "classpath:db/migration/" + this.vendor)
			.target(target)
			.load()
			.migrate();
	}

	/** Write something. */
	public void write(String statement, Object... values) {
		this.sql.sql(statement).params(values).update();
	}

	/** The segment "Free skating" of a competition that runs, and a club in it. */
	public Field field() {
		UUID competition = UUID.randomUUID();
		Field field = new Field(UUID.randomUUID(), UUID.randomUUID(), UUID.randomUUID());
		write("insert into competition (id, version, slug, name, place, zone, first_day, last_day, rulebook, state) "
				+ "values (?, 0, 'one', 'One', 'Ebbhaven', 'UTC', '2027-02-13', '2027-02-13', 'ours', 'RUNNING')",
				competition);
		write("insert into event (id, version, competition_id, position, slug, name, method, judges, even_panel_reason, "
				+ "policies) values (?, 0, ?, 1, 'junior', 'Junior', 'MAJORITY', 3, '', '{}')", field.event(),
				competition);
		write("insert into segment (id, version, event_id, position, slug, name, kind, factor, programme_seconds, "
				+ "tolerance_seconds) values (?, 0, ?, 1, 'free', 'Free skating', 'FREE', 100, 240, 10)",
				field.segment(), field.event());
		write("insert into club (id, version, name, town) values (?, 0, 'North Quay', 'Ebbhaven')", field.club());
		return field;
	}

	/** The entry of a team of that name. */
	public UUID entry(Field field, String name) {
		UUID team = UUID.randomUUID();
		UUID entry = UUID.randomUUID();
		write("insert into team (id, version, club_id, name, spoken_as) values (?, 0, ?, ?, '')", team, field.club(),
				name);
		write("insert into entry (id, version, event_id, team_id, state, late_reason, entered_at, withdrawn_reason) "
				+ "values (?, 0, ?, ?, 'ENTERED', '', current_timestamp, '')", entry, field.event(), team);
		return entry;
	}

	/** The identities of what teams are entered into. */
	public record Field(UUID event, UUID segment, UUID club) {
	}

}
