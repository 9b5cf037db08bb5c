package rimebook.live;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Properties;
import java.util.concurrent.TimeUnit;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Hears what other nodes announce ({@link Announcer}), on one connection of its own
 * beside the pool. If it breaks it is made again, and since something may have been said
 * meanwhile everything is then looked at. Whatever is missed nevertheless is found by the
 * look that {@link Pulse} takes each second.
 */
@Component
class NodeEar implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(NodeEar.class);

	/** After how long a silent connection is asked whether it is still one. */
	private static final int SILENCE = 5000;

	/** From one try to the next, in milliseconds. */
	private static final long PAUSE = 500;

	private final Announcer announcer;

	private final Runnable news;

	private volatile @Nullable Thread thread;

	private volatile @Nullable Connection connection;

	@Autowired
	NodeEar(Announcer announcer, Pulse pulse) {
		this(announcer, pulse::quicken);
	}

	/**
	 * @param news done when another node announced something, or may have
	 */
	NodeEar(Announcer announcer, Runnable news) {
		this.announcer = announcer;
		this.news = news;
	}

	@Override
	public synchronized void start() {
		JdbcConnectionDetails postgres = this.announcer.postgres();
		if (postgres != null && this.thread == null) {
			Thread listening = new Thread(() -> listen(postgres), "live-ear");
			listening.setDaemon(true);
			this.thread = listening;
			listening.start();
		}
	}

	private void listen(JdbcConnectionDetails postgres) {
		boolean broken = false;
		while (isRunning()) {
			try (Connection open = DriverManager.getConnection(postgres.getJdbcUrl(), properties(postgres))) {
				this.connection = open;
				try (Statement statement = open.createStatement()) {
					statement.execute("listen " + Announcer.CHANNEL);
				}
				if (broken) {
					log.info("Other nodes are heard again");
				}
				broken = false;
				this.news.run();
				hear(open);
			}
			catch (SQLException ex) {
				if (isRunning() && !broken) {
					log.warn("Other nodes are not heard; what they publish is found within a second: "
							+ ex.getMessage());
				}
				broken = true;
			}
			pause();
		}
	}

	private static Properties properties(JdbcConnectionDetails postgres) {
		Properties properties = new Properties();
		setIfPresent(properties, "user", postgres.getUsername());
		setIfPresent(properties, "password", postgres.getPassword());
		properties.setProperty("ApplicationName", "rimebook-ear");
		properties.setProperty("tcpKeepAlive", "true");
		properties.setProperty("connectTimeout", "5");
		return properties;
	}

	private static void setIfPresent(Properties properties, String name, @Nullable String value) {
		if (value != null) {
			properties.setProperty(name, value);
		}
	}

	/** Until the connection breaks or is closed. */
	private void hear(Connection open) throws SQLException {
		PGConnection postgres = open.unwrap(PGConnection.class);
		while (isRunning()) {
			PGNotification[] heard = postgres.getNotifications(SILENCE);
			if (heard == null || heard.length == 0) {
				if (!open.isValid(2)) {
					throw new SQLException("The connection on which other nodes are heard is none any more");
				}
			}
			else if (!Arrays.stream(heard).allMatch((each) -> this.announcer.isOwn(each.getParameter()))) {
				this.news.run();
			}
		}
	}

	private void pause() {
		try {
			TimeUnit.MILLISECONDS.sleep(isRunning() ? PAUSE : 0);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public synchronized void stop() {
		Thread listening = this.thread;
		this.thread = null;
		if (listening != null) {
			listening.interrupt();
		}
		close(this.connection);
	}

	private static void close(@Nullable Connection open) {
		try {
			if (open != null) {
				open.close();
			}
		}
		catch (SQLException ex) {
			log.debug("It is of no use any more", ex);
		}
	}

	@Override
	public boolean isRunning() {
		return this.thread != null;
	}

}
