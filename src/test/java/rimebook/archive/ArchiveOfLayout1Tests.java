package rimebook.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * An archive as it was written when layout 1 was new: a placement event of three teams,
 * out of a database with another competition. It must stay readable for as long as the
 * product lives; it is never written anew.
 */
class ArchiveOfLayout1Tests {

	static final Path SAMPLE = Path.of("src", "test", "resources", "archive", "layout-1.zip");

	@TempDir
	private Path directory;

	@Test
	void isStillGood() throws IOException {
		ArchiveCheck.Finding finding = ArchiveCheck.check(SAMPLE);
		assertThat(finding.faults()).isEmpty();
		assertThat(finding.found()).hasSize(6);
	}

	@Test
	void isStillRestored() throws SQLException, IOException {
		try (Connection restored = Archives.onH2(); ArchiveFile sample = ArchiveFile.open(SAMPLE)) {
			ArchiveRestore.restore(restored, SAMPLE);
			Path again = this.directory.resolve("again.zip");
			Archives.write(restored, String.valueOf(sample.about().get("competition")), Variant.WHOLE, again);
			assertThat(Files.size(again)).isPositive();
			try (ArchiveFile now = ArchiveFile.open(again)) {
				for (String name : sample.names()) {
					if (name.startsWith("data/result_version/") || name.equals(ArchiveFile.RECORD)) {
						assertThat(now.bytes(name)).as(name).isEqualTo(sample.bytes(name));
					}
				}
			}
		}
	}

}
