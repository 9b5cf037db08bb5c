package rimebook.live;

import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/**
 * Tells the other nodes on the same PostgreSQL database that something became public,
 * within the transaction that stores it: they hear of it when it is committed, and not at
 * all if it is not. A file of H2 has one process alone, so nobody is told.
 */
@Component
class Announcer {

	/** The channel on which nodes hear of each other. */
	static final String CHANNEL = "rimebook_moved";

	private static final String ANNOUNCE = "select pg_notify('" + CHANNEL + "', ?)";

	/** By which a node knows its own word again. */
	private final String node = UUID.randomUUID().toString();

	private final JdbcTemplate database;

	private final @Nullable JdbcConnectionDetails postgres;

	Announcer(JdbcTemplate database, ObjectProvider<JdbcConnectionDetails> details) {
		this.database = database;
		JdbcConnectionDetails known = details.getIfAvailable();
		this.postgres = (known != null && known.getJdbcUrl().startsWith("jdbc:postgresql:")) ? known : null;
	}

	/** Say so to all others; to be called within the transaction. */
	void announce() {
		if (this.postgres != null) {
			this.database.query(ANNOUNCE, (row) -> {
				// It answers with nothing.
			}, this.node);
		}
	}

	/** Tell whether it was this node that said so. */
	boolean isOwn(String word) {
		return this.node.equals(word);
	}

	/** How the database is reached, {@code null} where there are no other nodes. */
	@Nullable JdbcConnectionDetails postgres() {
		return this.postgres;
	}

}
