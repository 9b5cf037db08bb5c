package rimebook.web;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;

import javax.sql.DataSource;

import com.zaxxer.hikari.HikariDataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** A pool of six connections, of which the crowd may hold four. */
class CrowdConnectionsTests {

	private final HikariDataSource pool = new HikariDataSource();

	private DataSource shared;

	@BeforeEach
	void fillThePool() {
		this.pool.setJdbcUrl("jdbc:h2:mem:crowd");
		this.pool.setMaximumPoolSize(6);
		this.pool.setConnectionTimeout(1000);
		this.shared = new CrowdConnections(this.pool,
				new DoorSettings(0, 400, 8, 8, 8, 16, 4, Duration.ofMillis(200), List.of(), Duration.ZERO));
	}

	@AfterEach
	void emptyIt() {
		this.pool.close();
	}

	@Test
	void crewGetsAConnectionWhileTheCrowdHoldsAllOfItsOwn() throws Exception {
		List<Connection> held = new ArrayList<>();
		for (int i = 0; i < 4; i++) {
			held.add(inTheCrowd(this.shared::getConnection).get());
		}
		assertThatExceptionOfType(SQLTransientConnectionException.class)
			.isThrownBy(() -> unwrapped(inTheCrowd(this.shared::getConnection)));
		try (Connection one = this.shared.getConnection(); Connection two = this.shared.getConnection()) {
			assertThat(one.isValid(1)).isTrue();
			assertThat(two.isValid(1)).isTrue();
		}
	}

	@Test
	void whoeverHoldsOneGetsAnotherWithoutWaitingAndGivesBothBack() throws Exception {
		for (int round = 0; round < 20; round++) {
			boolean valid = inTheCrowd(() -> {
				try (Connection one = this.shared.getConnection(); Connection two = this.shared.getConnection()) {
					return one.isValid(1) && two.isValid(1);
				}
			}).get();
			assertThat(valid).isTrue();
		}
		assertThat(this.pool.getHikariPoolMXBean().getActiveConnections()).isZero();
	}

	@Test
	void connectionThatIsClosedTwiceIsGivenBackOnce() throws Exception {
		inTheCrowd(() -> {
			Connection one = this.shared.getConnection();
			one.close();
			one.close();
			return true;
		}).get();
		for (int i = 0; i < 4; i++) {
			inTheCrowd(this.shared::getConnection).get();
		}
		assertThatExceptionOfType(SQLTransientConnectionException.class)
			.isThrownBy(() -> unwrapped(inTheCrowd(this.shared::getConnection)));
	}

	/** Each on a thread of its own, as a request is. */
	private static <T> Future<T> inTheCrowd(Callable<T> act) {
		FutureTask<T> task = new FutureTask<>(() -> {
			CrowdConnections.forCrowd(true);
			return act.call();
		});
		new Thread(task).start();
		return task;
	}

	private static void unwrapped(Future<?> asked) throws Exception {
		try {
			asked.get();
		}
		catch (ExecutionException ex) {
			throw (SQLException) ex.getCause();
		}
	}

}
