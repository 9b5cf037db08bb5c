package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Makes one whole copy: under another name until it was opened, read and given to the
 * disk, and without a note until it has its own. Whenever the machine dies in between,
 * what lies there is no copy, and the one before still is.
 *
 * @param life which life of the database is copied
 */
record CopyFile(CopyFolder folder, CopyCheck access, String life) {

	/**
	 * Make it.
	 * @param at the moment before which everything is in it, UTC
	 * @param backup writes the database into the file of that path
	 * @param anchor tells the anchor of the record's head in it, empty for none
	 * @throws IOException if it cannot be written, or is not whole
	 */
	CopyNote make(Instant at, Consumer<Path> backup, Function<RecordHead, String> anchor) throws IOException {
		String name = CopyFolder.nameOf(at);
		Path part = this.folder.path().resolve(name + CopyFolder.COPY + WholeFile.PART);
		try {
			backup.accept(part);
			CopyNote note = new CopyNote(name, at, this.access.headOf(part), this.life, WholeFile.sha256(part));
			WholeFile.keep(part, this.folder.copy(name));
			note.write(this.folder.note(name), anchor.apply(note.head()));
			return note;
		}
		finally {
			Files.deleteIfExists(part);
		}
	}

}
