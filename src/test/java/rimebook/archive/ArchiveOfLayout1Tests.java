package rimebook.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Archives as they were written when layout 1 was new, out of a database with other
 * competitions: five teams by placement with a ruling, a result signed and opened again,
 * and a protest whose corrections were approved, and three teams by points. They must
 * stay readable for as long as the product lives; they are never written anew.
 */
class ArchiveOfLayout1Tests {

	static final Path SAMPLE = Path.of("src", "test", "resources", "archive", "layout-1.zip");

	static final Path POINTS = SAMPLE.resolveSibling("layout-1-points.zip");

	@TempDir
	private Path directory;

	static List<Path> samples() {
		return List.of(SAMPLE, POINTS);
	}

	@ParameterizedTest
	@MethodSource("samples")
	void isStillGood(Path archive) throws IOException {
		ArchiveCheck.Finding finding = ArchiveCheck.check(archive);
		assertThat(finding.faults()).isEmpty();
		assertThat(finding.found()).hasSize(6);
	}

	@ParameterizedTest
	@MethodSource("samples")
	void isStillRestored(Path archive) throws SQLException, IOException {
		try (Connection restored = Archives.onH2(); ArchiveFile sample = ArchiveFile.open(archive)) {
			ArchiveRestore.restore(restored, archive);
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
