package rimebook.live;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.RequiresDocker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/** Two nodes as far as one hears of the other, on one PostgreSQL database. */
@RequiresDocker
class AnnouncementsIntegrationTests {

	private static final String EARS = "from pg_stat_activity where application_name = 'rimebook-ear'"
			+ " and datname = current_database()";

	private final AtomicInteger news = new AtomicInteger();

	private final List<NodeEar> ears = new ArrayList<>();

	private JdbcTemplate database;

	private TransactionTemplate transactions;

	private JdbcConnectionDetails details;

	private Announcer speaks;

	private NodeEar ear;

	@BeforeEach
	void oneSpeaksAndOneHears() {
		PostgresDatabase postgres = PostgresDatabase.create();
		DriverManagerDataSource source = new DriverManagerDataSource(postgres.url(), postgres.username(),
				postgres.password());
		this.database = new JdbcTemplate(source);
		this.transactions = new TransactionTemplate(new JdbcTransactionManager(source));
		this.details = details(postgres.url(), postgres.username(), postgres.password());
		this.speaks = announcer(this.details);
		this.ear = begin(announcer(this.details), this.news);
		heardOnce();
	}

	@AfterEach
	void nobodyListens() {
		this.ears.forEach(NodeEar::stop);
	}

	@Test
	void whatIsCommittedIsHeardAndNothingBefore() {
		this.transactions.executeWithoutResult((status) -> {
			this.speaks.announce();
			assertSilence();
		});
		heardOnce();
	}

	@Test
	void whatIsNotCommittedIsNeverHeard() {
		this.transactions.executeWithoutResult((status) -> {
			this.speaks.announce();
			status.setRollbackOnly();
		});
		assertSilence();
	}

	@Test
	void aNodeHearsTheOthersAndNotItself() {
		AtomicInteger own = new AtomicInteger();
		begin(this.speaks, own);
		await().untilAtomic(own, (count) -> assertThat(count).isEqualTo(1));
		this.transactions.executeWithoutResult((status) -> this.speaks.announce());
		heardOnce();
		assertThat(own).hasValue(1);
	}

	/**
	 * It looks at everything once it hears again, so what was said meanwhile is found.
	 */
	@Test
	void aListenerThatWasCutOffComesBackAndMissesNothing() {
		for (int i = 0; i < 3; i++) {
			assertThat(this.database.queryForList("select pg_terminate_backend(pid) " + EARS, Boolean.class))
				.containsExactly(true);
			this.transactions.executeWithoutResult((status) -> this.speaks.announce());
			await().untilAsserted(
					() -> assertThat(this.database.queryForObject("select count(*) " + EARS, Integer.class)).isOne());
			int before = this.news.get();
			this.transactions.executeWithoutResult((status) -> this.speaks.announce());
			await().untilAtomic(this.news, (count) -> assertThat(count).isGreaterThan(before));
		}
	}

	@Test
	void whoeverStopsLeavesNoConnection() {
		this.ear.stop();
		await().untilAsserted(
				() -> assertThat(this.database.queryForObject("select count(*) " + EARS, Integer.class)).isZero());
		this.ear.start();
		heardOnce();
	}

	/** A file of H2 belongs to one process: nothing is said and nobody listens. */
	@Test
	void nothingOfItWithH2() {
		DriverManagerDataSource none = new DriverManagerDataSource("jdbc:h2:mem:nobody");
		Announcer alone = new Announcer(new JdbcTemplate(none),
				new StaticListableBeanFactory(Map.of("details", details("jdbc:h2:mem:nobody", "sa", "")))
					.getBeanProvider(JdbcConnectionDetails.class));
		alone.announce();
		NodeEar deaf = begin(alone, this.news);
		assertThat(deaf.isRunning()).isFalse();
	}

	private void heardOnce() {
		await().atMost(Duration.ofSeconds(5)).untilAtomic(this.news, (count) -> assertThat(count).isEqualTo(1));
		this.news.set(0);
	}

	private void assertSilence() {
		await().during(Duration.ofMillis(200))
			.atMost(Duration.ofSeconds(2))
			.untilAtomic(this.news, (count) -> assertThat(count).isZero());
	}

	private NodeEar begin(Announcer announcer, AtomicInteger count) {
		NodeEar made = new NodeEar(announcer, count::incrementAndGet);
		this.ears.add(made);
		made.start();
		return made;
	}

	private Announcer announcer(JdbcConnectionDetails at) {
		return new Announcer(this.database,
				new StaticListableBeanFactory(Map.of("details", at)).getBeanProvider(JdbcConnectionDetails.class));
	}

	private static JdbcConnectionDetails details(String url, String username, String password) {
		return new JdbcConnectionDetails() {
			@Override
			public String getJdbcUrl() {
				return url;
			}

			@Override
			public String getUsername() {
				return username;
			}

			@Override
			public String getPassword() {
				return password;
			}
		};
	}

}
