package rimebook.music;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;

import rimebook.shared.KeptFolder;

/**
 * Files in a folder beside the database, each named by its digest. A file is written
 * under another name and gets its own once it is whole and on the disk, so what has the
 * name of a digest is whole. Whatever is deleted leaves a note, so that copies elsewhere
 * are deleted, too.
 */
final class FolderStore implements MusicStore {

	private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

	private final Path folder;

	FolderStore(Path folder) {
		this.folder = folder;
	}

	@Override
	public Arrived write(InputStream from) throws IOException {
		Files.createDirectories(this.folder);
		String name = UUID.randomUUID() + KeptFolder.PART;
		Path part = this.folder.resolve(name);
		try {
			return write(from, part);
		}
		catch (IOException | RuntimeException ex) {
			Files.deleteIfExists(part);
			throw ex;
		}
	}

	private static Arrived write(InputStream from, Path part) throws IOException {
		Digesting digesting = new Digesting(from);
		long bytes;
		try (OutputStream into = Files.newOutputStream(part, StandardOpenOption.CREATE_NEW)) {
			bytes = digesting.transferTo(into);
		}
		try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
			written.force(true);
		}
		return new Arrived(part.getFileName().toString(), digesting.hex(), bytes);
	}

	@Override
	public void keep(Arrived arrived) throws IOException {
		Files.deleteIfExists(gone(arrived.sha256()));
		Files.move(this.folder.resolve(arrived.part()), file(arrived.sha256()), StandardCopyOption.ATOMIC_MOVE);
	}

	@Override
	public void drop(Arrived arrived) throws IOException {
		Files.deleteIfExists(this.folder.resolve(arrived.part()));
	}

	@Override
	public Set<String> here(Collection<String> digests) {
		return digests.stream().filter((digest) -> Files.isRegularFile(file(digest))).collect(Collectors.toSet());
	}

	@Override
	public Resource bytes(String digest, long length) {
		return new FileSystemResource(file(digest));
	}

	@Override
	public boolean isOfTheDatabase() {
		return false;
	}

	/**
	 * The note comes first: whatever happens in between, the file goes, here and there.
	 */
	@Override
	public void delete(String digest) {
		try {
			if (Files.exists(file(digest))) {
				Files.write(gone(digest), new byte[0]);
				Files.deleteIfExists(file(digest));
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/**
	 * Where no file at all is known the database is new, or is not the one of this
	 * folder, so only what never became whole goes.
	 */
	@Override
	public int tidy(Set<String> known) throws IOException {
		if (!Files.isDirectory(this.folder)) {
			return 0;
		}
		Set<String> names = names();
		List<String> left = names.stream()
			.filter((name) -> DIGEST.matcher(name).matches())
			.filter((name) -> names.contains(name + KeptFolder.GONE) || !known.isEmpty() && !known.contains(name))
			.toList();
		left.forEach(this::delete);
		List<String> parts = names.stream().filter((name) -> name.endsWith(KeptFolder.PART)).toList();
		for (String part : parts) {
			Files.deleteIfExists(this.folder.resolve(part));
		}
		return left.size() + parts.size();
	}

	private Set<String> names() throws IOException {
		try (Stream<Path> files = Files.list(this.folder)) {
			return files.map((file) -> file.getFileName().toString()).collect(Collectors.toSet());
		}
	}

	private Path gone(String digest) {
		return file(digest).resolveSibling(digest + KeptFolder.GONE);
	}

	/** Digests come from the database, which a restored archive may have filled. */
	private Path file(String digest) {
		if (!DIGEST.matcher(digest).matches()) {
			throw new IllegalArgumentException("No digest: " + digest);
		}
		return this.folder.resolve(digest);
	}

}
