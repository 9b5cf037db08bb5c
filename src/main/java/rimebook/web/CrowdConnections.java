package rimebook.web;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

import javax.sql.DataSource;

import org.springframework.jdbc.datasource.DelegatingDataSource;

/**
 * The database's connections, of which the crowd may hold only some at once, so that a
 * judge's card never waits for one. Whoever already holds one of them gets another
 * without waiting, or two of the crowd could wait for each other.
 */
class CrowdConnections extends DelegatingDataSource {

	private static final ThreadLocal<Boolean> CROWD = ThreadLocal.withInitial(() -> false);

	private static final ThreadLocal<Integer> HELD = ThreadLocal.withInitial(() -> 0);

	private final Semaphore places;

	private final Duration patience;

	CrowdConnections(DataSource all, DoorSettings settings) {
		super(all);
		this.places = new Semaphore(settings.queries());
		this.patience = settings.patience();
	}

	/** Say whether what this thread does from now on is done for the crowd. */
	static void forCrowd(boolean isCrowd) {
		if (isCrowd) {
			CROWD.set(true);
		}
		else {
			CROWD.remove();
		}
	}

	@Override
	public Connection getConnection() throws SQLException {
		if (!CROWD.get()) {
			return super.getConnection();
		}
		if (HELD.get() == 0) {
			await();
		}
		HELD.set(HELD.get() + 1);
		try {
			return returning(super.getConnection());
		}
		catch (SQLException | RuntimeException ex) {
			giveBack();
			throw ex;
		}
	}

	private void await() throws SQLException {
		try {
			if (!this.places.tryAcquire(this.patience.toMillis(), TimeUnit.MILLISECONDS)) {
				throw new SQLTransientConnectionException("Too many visitors ask the database at once.");
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new SQLTransientConnectionException(ex);
		}
	}

	/** A connection is closed on the thread that opened it. */
	private void giveBack() {
		int left = HELD.get() - 1;
		HELD.set(left);
		if (left == 0) {
			HELD.remove();
			this.places.release();
		}
	}

	private Connection returning(Connection connection) {
		AtomicBoolean open = new AtomicBoolean(true);
		return (Connection) Proxy.newProxyInstance(Connection.class.getClassLoader(),
				new Class<?>[] { Connection.class }, (proxy, method, arguments) -> {
					try {
						return method.invoke(connection, arguments);
					}
					catch (InvocationTargetException ex) {
						throw ex.getTargetException();
					}
					finally {
						if (method.getName().equals("close") && open.compareAndSet(true, false)) {
							giveBack();
						}
					}
				});
	}

}
