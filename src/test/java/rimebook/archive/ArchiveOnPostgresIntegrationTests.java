package rimebook.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import rimebook.testsupport.OnPostgres;

import static org.assertj.core.api.Assertions.assertThat;

@OnPostgres
class ArchiveOnPostgresIntegrationTests extends ArchiveIntegrationTests {

	/** Out of the one, into the other, out of that and back. */
	@ParameterizedTest
	@MethodSource("rimebook.archive.ArchiveOfLayout1Tests#samples")
	void goesFromOneDatabaseToTheOtherAndBack(Path archive) throws Exception {
		byte[] once = throughBoth(archive);
		byte[] twice = throughBoth(this.directory.resolve("h2.zip"));
		assertThat(twice).isEqualTo(once);
	}

	/** Of an archive that was written from H2. */
	private byte[] throughBoth(Path archive) throws Exception {
		Path fromPostgres = this.directory.resolve("postgres.zip");
		Path fromH2 = this.directory.resolve("h2.zip");
		String competition;
		try (ArchiveFile file = ArchiveFile.open(archive)) {
			competition = String.valueOf(file.about().get("competition"));
		}
		try (Connection restored = Archives.onPostgres()) {
			ArchiveRestore.restore(restored, archive);
			Archives.write(restored, competition, Variant.WHOLE, fromPostgres);
		}
		try (Connection restored = Archives.onH2()) {
			ArchiveRestore.restore(restored, fromPostgres);
			Archives.write(restored, competition, Variant.WHOLE, fromH2);
		}
		assertThat(Files.readAllBytes(fromH2)).isEqualTo(Files.readAllBytes(fromPostgres));
		return Files.readAllBytes(fromH2);
	}

}
