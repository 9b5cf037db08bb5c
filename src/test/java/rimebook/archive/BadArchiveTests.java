package rimebook.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/**
 * Files that were damaged, and files made to do harm, these with hashes and a seal that
 * fit.
 */
class BadArchiveTests {

	@TempDir
	private Path directory;

	private Path sample() throws IOException {
		return Files.copy(ArchiveOfLayout1Tests.SAMPLE, this.directory.resolve("sample.zip"));
	}

	@Test
	void aNameThatLeadsOutOfTheFolderIsRefused() throws IOException {
		for (String name : new String[] { "../evil.txt", "/evil.txt", "data/../../evil.txt", "C:\\evil.txt", ".hidden",
				"a//b", "two\nlines" }) {
			assertThat(ArchiveCheck.check(with(name, "x".getBytes(StandardCharsets.UTF_8))).faults()).singleElement()
				.asString()
				.contains("a file that none of Rimebook has");
		}
	}

	private Path with(String name, byte[] content) throws IOException {
		Path file = Files.createTempFile(this.directory, "with", ".zip");
		try (SealedZip zip = SealedZip.create(file)) {
			zip.add(name, content);
			zip.finish();
		}
		return file;
	}

	/** A hundred and thirty million zeros are a few hundred kilobytes in the file. */
	@Test
	void whatSwellsWhenItIsUnpackedIsRefused() throws IOException {
		Path file = with("data/person.json", new byte[(1 << 27) + 1]);
		assertThat(Files.size(file)).isLessThan(1_000_000);
		assertThat(ArchiveCheck.check(file).faults()).singleElement()
			.asString()
			.contains("larger than any of an archive");
	}

	/** Another program might take the other one. */
	@Test
	void twoFilesOfOneNameAreRefused() throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
			zip.setComment(SealedZip.SEAL_WORDS + "-".repeat(SealedZip.SEAL));
			for (String name : new String[] { "index.html", "index.htmk" }) {
				zip.putNextEntry(new ZipEntry(name));
				zip.write(name.getBytes(StandardCharsets.UTF_8));
				zip.closeEntry();
			}
		}
		byte[] twice = new String(bytes.toByteArray(), StandardCharsets.ISO_8859_1).replace("htmk", "html")
			.getBytes(StandardCharsets.ISO_8859_1);
		assertThat(ArchiveCheck.check(sealed(twice)).faults()).singleElement()
			.asString()
			.contains("two files index.html");
	}

	private Path sealed(byte[] zip) throws IOException {
		Path file = this.directory.resolve("sealed.zip");
		byte[] content = Arrays.copyOf(zip, zip.length - SealedZip.SEAL);
		Files.write(file, content);
		Files.writeString(file, Sha256.of(content), StandardOpenOption.APPEND);
		return file;
	}

	@Test
	void noPasswordComesInWithAnArchive() throws Exception {
		Path schema = Archives.forged(sample(), (name, text) -> name.equals("schema.json")
				? text.replaceFirst("\"sign_in_name\":", "\"password_hash\":\"text\",\"sign_in_name\":") : text);
		assertThat(ArchiveCheck.check(schema).faults()).singleElement()
			.asString()
			.contains("a column 'person.password_hash' that this version");
		Path row = Archives.forged(sample2(), (name, text) -> name.equals("data/person.json")
				? text.replace("\"sign_in_name\"", "\"active\":true,\"password_hash\":\"x\",\"sign_in_name\"") : text);
		try (Connection restored = Archives.onH2(); Statement statement = restored.createStatement()) {
			ArchiveRestore.restore(restored, row);
			try (ResultSet open = statement
				.executeQuery("select count(*) from person where active or password_hash <> ''")) {
				open.next();
				assertThat(open.getLong(1)).isZero();
			}
		}
	}

	private Path sample2() throws IOException {
		return Files.copy(ArchiveOfLayout1Tests.SAMPLE, this.directory.resolve("another.zip"));
	}

	@Test
	void whatCannotBeReadIsASentence() throws IOException {
		Path sample = sample();
		says(sample, "data/result_version.json", "[null]");
		says(sample, "data/result_version.json", "[{}]");
		says(sample, "data/result_version.json", "{");
		says(sample, "data/event.json", "[{\"id\":1}]");
		says(sample, "data/competition.json", "[]");
		says(sample, "record/lines.jsonl", "{}\n");
		says(sample, "archive.json", "[]");
		says(sample, "schema.json", "[]");
		says(sample, "schema.json", "{\"club\":{\"id; drop table club\":\"text\"}}");
		says(sample, "data/club.json", "[".repeat(100_000));
		says(sample, "data/seat.json", "[{\"id\":\"no identity\"}]");
	}

	private static void says(Path sample, String file, String content) throws IOException {
		Path forged = Archives.forged(sample, (name, text) -> name.equals(file) ? content : text);
		ArchiveCheck.Finding finding = ArchiveCheck.check(forged);
		assertThat(finding.faults()).as(file + " " + content.substring(0, Math.min(20, content.length())))
			.isNotEmpty()
			.allSatisfy((fault) -> assertThat(fault).endsWith("."));
	}

	@Test
	void everySingleByteIsFound() throws Exception {
		Path archive = ArchiveOfLayout1Tests.SAMPLE;
		byte[] bytes = Files.readAllBytes(archive);
		Random random = new Random(20261129);
		Path changed = this.directory.resolve("changed.zip");
		for (int i = 0; i < 2000; i++) {
			byte[] other = bytes.clone();
			int at = random.nextInt(other.length);
			other[at] ^= (byte) (1 + random.nextInt(255));
			Files.write(changed, other);
			assertThat(ArchiveCheck.check(changed).faults()).as("byte %d", at).isNotEmpty();
		}
		assertThat(ArchiveCheck.check(archive).faults()).isEmpty();
	}

	@Test
	void aCopyThatWasCutShortIsFound() throws Exception {
		Path archive = ArchiveOfLayout1Tests.SAMPLE;
		byte[] bytes = Files.readAllBytes(archive);
		Random random = new Random(7);
		Path cut = this.directory.resolve("cut.zip");
		for (int i = 0; i < 200; i++) {
			int length = (i < 70) ? bytes.length - 1 - i : random.nextInt(bytes.length);
			Files.write(cut, Arrays.copyOf(bytes, length));
			assertThat(ArchiveCheck.check(cut).faults()).as("%d bytes", length).isNotEmpty();
		}
	}

	/** The command that restores asks before it makes tables. */
	@Test
	void aDatabaseThatHoldsSomethingIsKnownWithItsTablesOrWithout() throws Exception {
		try (Connection bare = DriverManager.getConnection("jdbc:h2:mem:bare", "rimebook", "");
				Statement statement = bare.createStatement()) {
			ArchiveRestore.requireEmpty(bare);
			statement.execute("create table person (id uuid)");
			ArchiveRestore.requireEmpty(bare);
			statement.execute("insert into person values (random_uuid())");
			assertThatThrownBy(() -> ArchiveRestore.requireEmpty(bare)).isInstanceOf(ArchiveRefusal.class)
				.hasMessageContaining("1 rows of 'person'");
			statement.execute("drop table person");
			statement.execute("create table snow (depth int)");
			assertThatThrownBy(() -> ArchiveRestore.requireEmpty(bare)).isInstanceOf(ArchiveRefusal.class)
				.hasMessageContaining("a table 'snow', which is none of Rimebook");
		}
	}

}
