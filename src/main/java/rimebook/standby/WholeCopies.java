package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The newest copy of a folder that is whole, and those newer that are not. Those of the
 * service that gave the last sign of life there come first, whatever the clocks of two
 * laptops say: it began from the others.
 *
 * @param newest empty if none is whole
 * @param broken each with what is wrong, the newest first
 */
record WholeCopies(Optional<CopyNote> newest, List<String> broken) {

	static WholeCopies in(CopyFolder folder, CopyCheck access) throws IOException {
		List<String> broken = new ArrayList<>();
		String life = SignOfLife.read(folder.alive()).map(SignOfLife::life).orElse("");
		Map<String, String> lives = folder.notes()
			.stream()
			.collect(Collectors.toMap(CopyNote::name, CopyNote::life, (one, same) -> one));
		List<Path> files = folder.files(CopyFolder.COPY)
			.stream()
			.sorted(Comparator
				.<Path, Boolean>comparing((file) -> life.equals(lives.getOrDefault(CopyFolder.nameOf(file), life)))
				.thenComparing(Comparator.naturalOrder())
				.reversed())
			.toList();
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
		String name = CopyFolder.nameOf(file);
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
