package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.zip.Deflater;
import java.util.zip.ZipOutputStream;

import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.h2.mvstore.MVStore;

/**
 * H2's own online backup, as its command {@code BACKUP TO} does it: nobody who writes
 * waits for it. Here it goes at a pace, and is compressed in half the time for a tenth
 * more room.
 *
 * @param store where the database is kept
 */
record OnlineBackup(MVStore store) {

	/** That of the database at the other end. */
	static OnlineBackup of(Connection connection) throws SQLException {
		return new OnlineBackup(((SessionLocal) connection.unwrap(JdbcConnection.class).getSession()).getDatabase()
			.getStore()
			.getMvStore());
	}

	/** Write the database into that file. */
	void into(Path file, Pace pace) throws IOException {
		try (ZipOutputStream zip = new ZipOutputStream(pace.over(Files.newOutputStream(file)))) {
			zip.setLevel(Deflater.BEST_SPEED);
			this.store.commit();
			this.store.getFileStore().backup(zip);
		}
	}

}
