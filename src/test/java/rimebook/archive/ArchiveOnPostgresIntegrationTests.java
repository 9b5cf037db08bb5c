package rimebook.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;

import org.junit.jupiter.api.Test;

import rimebook.testsupport.OnPostgres;

import static org.assertj.core.api.Assertions.assertThat;

@OnPostgres
class ArchiveOnPostgresIntegrationTests extends ArchiveIntegrationTests {

	/** Out of the one, into the other, out of that and back. */
	@Test
	void goesFromOneDatabaseToTheOtherAndBack() throws Exception {
		byte[] once = throughBoth(ArchiveOfLayout1Tests.SAMPLE);
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
