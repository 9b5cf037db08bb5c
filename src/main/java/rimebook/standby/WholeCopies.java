package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The newest copy of a folder that is whole, and those newer that are not.
 *
 * @param newest empty if none is whole
 * @param broken each with what is wrong, the newest first
 */
record WholeCopies(Optional<CopyNote> newest, List<String> broken) {

	static WholeCopies in(CopyFolder folder, CopyCheck access) throws IOException {
		List<String> broken = new ArrayList<>();
		List<Path> files = folder.files(CopyFolder.COPY).stream().sorted(Comparator.reverseOrder()).toList();
		for (Path file : files) {
			try {
				return new WholeCopies(Optional.of(check(folder, file, access)), broken);
			}
			catch (IOException ex) {
				broken.add(file.getFileName() + ": " + ex.getMessage());
			}
		}
		return new WholeCopies(Optional.empty(), broken);
	}

	private static CopyNote check(CopyFolder folder, Path file, CopyCheck access) throws IOException {
		String name = file.getFileName().toString().replaceFirst("\\.zip$", "");
		if (Files.notExists(folder.note(name))) {
			throw new IOException("it has no note, so it never became whole");
		}
		CopyNote note = CopyNote.read(folder.note(name));
		if (!WholeFile.sha256(file).equals(note.sha256())) {
			throw new IOException("it is not the file that its note tells of (SHA-256)");
		}
		if (!access.headOf(file).equals(note.head())) {
			throw new IOException("its record does not end as its note tells");
		}
		return note;
	}

}
