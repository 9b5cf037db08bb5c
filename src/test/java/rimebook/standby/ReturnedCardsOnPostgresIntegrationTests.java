package rimebook.standby;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.RequiresDocker;

import static org.assertj.core.api.Assertions.assertThat;

/** From a dump by PostgreSQL's own tools, as the README says. */
@RequiresDocker
class ReturnedCardsOnPostgresIntegrationTests extends ReturnedCards {

	private static final String DUMP = "/tmp/rimebook.dump";

	private PostgresDatabase database;

	private Instant dumped;

	@Override
	List<String> firstLaptop() {
		this.database = PostgresDatabase.create();
		return settings();
	}

	@Override
	void copy(ConfigurableApplicationContext service) {
		this.dumped = Instant.now().truncatedTo(ChronoUnit.MILLIS);
		this.database.run("pg_dump", "-Fc", "-U", this.database.username(), "-f", DUMP, this.database.name());
	}

	@Override
	void beforeItDies(ConfigurableApplicationContext service) {
		// Nothing more is known of it.
	}

	@Override
	List<String> nextLaptop() {
		this.database = PostgresDatabase.create();
		this.database.run("pg_restore", "--exit-on-error", "-U", this.database.username(), "-d", this.database.name(),
				DUMP);
		return Stream.concat(settings().stream(), Stream.of("restored-until=" + this.dumped)).toList();
	}

	@Test
	void theServiceKnowsUntilWhenItKnows() {
		ServiceLife.Origin from = service().getBean(ServiceLives.class).current().from();
		assertThat(from.knownUntil()).isEqualTo(this.dumped);
		assertThat(alarmAtFirst()).contains("no card came back since", "What else was lost is not known");
		assertThat(service().getBean(Copying.class).state().kind()).isEqualTo(CopyState.Kind.ELSEWHERE);
		assertThat(query("select count(*) from record_line where action = 'service.started-from-copy'")).isOne();
	}

	private List<String> settings() {
		return Stream.concat(this.database.asProperties().stream(), Stream.of("rimebook.copy.elsewhere=true")).toList();
	}

}
