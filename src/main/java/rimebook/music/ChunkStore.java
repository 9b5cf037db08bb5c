package rimebook.music;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.core.io.AbstractResource;
import org.springframework.core.io.Resource;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Rows of the database, for nodes that have nothing else in common. Written within the
 * transaction of whoever hands music in, so a file without its row cannot exist.
 */
final class ChunkStore implements MusicStore {

	/** As many bytes as a row has room for. */
	static final int CHUNK = 256 * 1024;

	private final JdbcClient database;

	ChunkStore(JdbcClient database) {
		this.database = database;
	}

	/** The digest is known only at the end, so until then the rows have another name. */
	@Override
	public Arrived write(InputStream from) throws IOException {
		Digesting digesting = new Digesting(from);
		String part = "part " + UUID.randomUUID();
		long bytes = 0;
		byte[] chunk = digesting.readNBytes(CHUNK);
		for (int number = 0; chunk.length > 0; number++) {
			this.database.sql("insert into music_chunk (sha256, number, content) values (?, ?, ?)")
				.params(part, number, chunk)
				.update();
			bytes += chunk.length;
			chunk = digesting.readNBytes(CHUNK);
		}
		return new Arrived(part, digesting.hex(), bytes);
	}

	/** Where the same bytes are here already the new ones go. */
	@Override
	public void keep(Arrived arrived) {
		if (here(Set.of(arrived.sha256())).isEmpty()) {
			this.database.sql("update music_chunk set sha256 = ? where sha256 = ?")
				.params(arrived.sha256(), arrived.part())
				.update();
		}
		else {
			delete(arrived.part());
		}
	}

	/** Goes with the transaction. */
	@Override
	public void drop(Arrived arrived) {
	}

	@Override
	public Set<String> here(Collection<String> digests) {
		if (digests.isEmpty()) {
			return Set.of();
		}
		return new HashSet<>(
				this.database.sql("select sha256 from music_chunk where number = 0 and sha256 in (:digests)")
					.param("digests", digests)
					.query(String.class)
					.list());
	}

	@Override
	public Resource bytes(String digest, long length) {
		return new Chunks(this.database, digest, length);
	}

	@Override
	public boolean isOfTheDatabase() {
		return true;
	}

	@Override
	public void delete(String digest) {
		this.database.sql("delete from music_chunk where sha256 = ?").param(digest).update();
	}

	/** Nothing is left behind: it went with the transaction. */
	@Override
	public int tidy(Set<String> known) {
		return 0;
	}

	/** What is stored under a digest, a row at a time. */
	private static final class Chunks extends AbstractResource {

		private final JdbcClient database;

		private final String digest;

		private final long length;

		private Chunks(JdbcClient database, String digest, long length) {
			this.database = database;
			this.digest = digest;
			this.length = length;
		}

		@Override
		public String getDescription() {
			return "music " + this.digest;
		}

		@Override
		public long contentLength() {
			return this.length;
		}

		@Override
		public InputStream getInputStream() {
			return new ChunkStream(
					(number) -> this.database.sql("select content from music_chunk where sha256 = ? and number = ?")
						.params(this.digest, number)
						.query(byte[].class)
						.optional()
						.orElseGet(() -> new byte[0]),
					this.length);
		}

		@Override
		public boolean equals(@Nullable Object other) {
			return other instanceof Chunks chunks && chunks.digest.equals(this.digest);
		}

		@Override
		public int hashCode() {
			return this.digest.hashCode();
		}

	}

}
