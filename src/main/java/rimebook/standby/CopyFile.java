package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Function;

/**
 * Makes one whole copy: under another name until it was opened, read and given to the
 * disk, and without a note until it has its own. Whenever the machine dies in between,
 * what lies there is no copy, and the one before still is.
 *
 * @param life which life of the database is copied
 * @param pace at which it is done
 */
record CopyFile(CopyFolder folder, CopyCheck access, String life, Pace pace) {

	/**
	 * Make it.
	 * @param at the moment before which everything is in it, UTC
	 * @param backup writes the database into the file of that path
	 * @param anchor tells the anchor of the record's head in it, empty for none
	 * @throws IOException if it cannot be written, or is not whole
	 */
	CopyNote make(Instant at, Backup backup, Function<RecordHead, String> anchor) throws IOException {
		String name = CopyFolder.nameOf(at);
		Path part = this.folder.path().resolve(name + CopyFolder.COPY + WholeFile.PART);
		try {
			backup.into(part);
			CopyNote note = new CopyNote(name, at, this.access.headOf(part, this.pace), this.life,
					WholeFile.sha256(part, this.pace));
			WholeFile.keep(part, this.folder.copy(name));
			note.write(this.folder.note(name), anchor.apply(note.head()));
			return note;
		}
		finally {
			Files.deleteIfExists(part);
		}
	}

	/** Writes the database. */
	@FunctionalInterface
	interface Backup {

		/** Write it into that file, which is not there. */
		void into(Path part) throws IOException;

	}

}
