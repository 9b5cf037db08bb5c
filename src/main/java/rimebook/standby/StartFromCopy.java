package rimebook.standby;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;

/**
 * Lays the newest whole copy of a folder where the service looks for its database, and
 * begins a new life in it. It is done under another name and gets its own at once, so
 * that a start that is cut short leaves nothing behind that looks like a database. Music
 * comes once the service answers ({@link FilesBack}).
 *
 * @param folder the second place
 * @param database where the service looks
 * @param inPlace whether a database that is there already may be put aside
 */
record StartFromCopy(CopyFolder folder, DatabaseFile database, boolean inPlace, Clock clock) {

	private static final Log log = LogFactory.getLog(StartFromCopy.class);

	/**
	 * Do it. A database that began from this very folder goes on as it is: whoever starts
	 * a service anew with the same command does not lose what was done since.
	 * @return what there is now, in sentences for people
	 * @throws CopyRefusedException if there is no whole copy, or a database that may not
	 * be put aside
	 */
	StartedFromCopy run() {
		try {
			if (Files.exists(this.database.path())) {
				requireNotInUse();
				if (beganHere()) {
					log.info("The database began from " + this.folder.path() + " already and goes on as it is");
					return StartedFromCopy.GOES_ON;
				}
				requireInPlace();
			}
			return restore();
		}
		catch (IOException | SQLException ex) {
			throw CopyRefusedException.failed(this.folder.path(), ex);
		}
	}

	private void requireNotInUse() throws IOException {
		try (FileChannel file = FileChannel.open(this.database.path(), StandardOpenOption.WRITE);
				FileLock lock = file.tryLock()) {
			if (lock == null) {
				throw CopyRefusedException.inUse(this.database.path());
			}
		}
		catch (OverlappingFileLockException ex) {
			throw CopyRefusedException.inUse(this.database.path());
		}
	}

	private boolean beganHere() {
		try (Connection connection = this.database.access().open(this.database.path(), ";ACCESS_MODE_DATA=r")) {
			return LifeRows.newestFolder(connection).equals(this.folder.path().toString());
		}
		catch (SQLException ex) {
			// Of another version, or broken: then it is in the way like any other.
			return false;
		}
	}

	private void requireInPlace() {
		if (!this.inPlace) {
			throw CopyRefusedException.inTheWay(this.database.path());
		}
	}

	private StartedFromCopy restore() throws IOException, SQLException {
		if (!Files.isDirectory(this.folder.path())) {
			throw CopyRefusedException.noFolder(this.folder.path());
		}
		WholeCopies found = WholeCopies.in(this.folder, this.database.access());
		CopyNote copy = found.newest().orElseThrow(() -> CopyRefusedException.none(this.folder.path(), found.broken()));
		found.broken().forEach((broken) -> log.warn("Not whole, passed over: " + broken));
		Since since = Since.read(this.folder, copy);
		Path restoring = this.database.beside("restoring");
		Files.createDirectories(this.database.folder());
		Files.deleteIfExists(restoring);
		CopyCheck.unpack(this.folder.copy(copy.name()), restoring, Pace.NONE);
		ServiceLife.Origin origin = since.origin(copy, this.folder.path().toString());
		StartedFromCopy started;
		try (Connection connection = this.database.access().open(restoring, "")) {
			started = StartedFromCopy.of(origin, since.lines(), connection);
			LifeRows.begin(connection, UUID.randomUUID(), now(), origin, since.lines());
		}
		putAside();
		WholeFile.keep(restoring, this.database.path());
		return started.passing(found.broken());
	}

	/**
	 * Nothing is ever deleted: it may hold what no copy has. Its music goes first, so
	 * that none is left beside a database that knows nothing of it.
	 */
	private void putAside() throws IOException {
		if (Files.exists(this.database.path())) {
			DatabaseFile aside = this.database.called("before-" + CopyFolder.nameOf(now()));
			if (Files.exists(this.database.music().path())) {
				Files.move(this.database.music().path(), aside.music().path());
			}
			Files.move(this.database.path(), aside.path());
			log.warn("The database that was there lies now in " + aside.path());
		}
	}

	private Instant now() {
		return this.clock.instant();
	}

}
