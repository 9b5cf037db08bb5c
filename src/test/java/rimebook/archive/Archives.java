package rimebook.archive;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.entries.RequiredElements;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.SmallCompetition;

/**
 * Competitions to archive, archives that somebody changed, and databases to restore into.
 */
final class Archives {

	/** The moment that stands in every archive of these tests. */
	static final Instant NOW = Instant.parse("2026-11-29T17:00:00Z");

	private Archives() {
	}

	/** Two segments of majority judging, both skated to the end. */
	static SmallCompetition placement(ApplicationContext context, int teams, int judges) {
		SmallCompetition competition = SmallCompetition.running(context, teams, judges);
		competition.open(1);
		competition.skateRest(1);
		competition.open(2);
		competition.skateRest(2);
		return competition;
	}

	/** An event of points judging, its first segment skated. */
	static SmallCompetition points(ApplicationContext context) {
		SmallCompetition competition = SmallCompetition.running(context, 3,
				CompetitionFixtures.aPointsEvent("Novice", 3));
		context.getBean(RequiredElements.class)
			.set(new RequiredElements.SetRequired(competition.segment(1), "", "ME 1\nI/CrI 1-2", null, 9, -1),
					SmallCompetition.SECRETARY);
		competition.open(1);
		competition.skateRest(1);
		return competition;
	}

	/** The archive of a competition. */
	static Path write(Connection connection, SmallCompetition competition, Variant variant, Path file)
			throws SQLException, IOException {
		return write(connection, competition.competition().id().toString(), variant, file);
	}

	/** The archive of a competition that is known by that. */
	static Path write(Connection connection, String competition, Variant variant, Path file)
			throws SQLException, IOException {
		ArchiveWriting.write(connection, new ArchiveWriting.Order(competition, variant, NOW, List.of()), file,
				ArchiveWriting.Progress.UNSEEN);
		return file;
	}

	/**
	 * The same archive with other content in some of its files, and hashes and seal as if
	 * it had always been so.
	 * @param change of the name and the content of each file; {@code null} leaves it out
	 */
	static Path forged(Path archive, BiFunction<String, String, @Nullable String> change) throws IOException {
		Path forged = archive.resolveSibling(UUID.randomUUID() + ".zip");
		try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(archive)));
				SealedZip out = SealedZip.create(forged)) {
			for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
				String content = change.apply(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
				if (content != null && !entry.getName().equals(SealedZip.MANIFEST)) {
					out.add(entry.getName(), content);
				}
			}
			out.finish();
		}
		return forged;
	}

	/** What is inside as files in a folder. */
	static Path unpacked(Path archive, Path folder) throws IOException {
		try (ArchiveFile file = ArchiveFile.open(archive)) {
			for (String name : file.names()) {
				Path target = folder.resolve(name);
				Files.createDirectories(target.getParent());
				Files.write(target, file.bytes(name));
			}
		}
		return folder;
	}

	/** An empty database in memory with the tables of today. */
	static Connection onH2() throws SQLException {
		String url = "jdbc:h2:mem:restored-" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1";
		ArchiveDatabase.prepare(url, "rimebook", "");
		return DriverManager.getConnection(url, "rimebook", "");
	}

	/** An empty database of PostgreSQL with the tables of today. */
	static Connection onPostgres() throws SQLException {
		PostgresDatabase database = PostgresDatabase.create();
		ArchiveDatabase.prepare(database.url(), database.username(), database.password());
		return DriverManager.getConnection(database.url(), database.username(), database.password());
	}

}
