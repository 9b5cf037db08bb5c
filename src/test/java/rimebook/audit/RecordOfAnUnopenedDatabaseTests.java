package rimebook.audit;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.FileSystemResource;
import org.springframework.jdbc.datasource.init.ScriptUtils;

import static org.assertj.core.api.Assertions.assertThat;

/** Nobody has to start the service on an old database only to have it verified. */
class RecordOfAnUnopenedDatabaseTests {

	private Connection database;

	@BeforeEach
	void aDatabaseAsItWas() throws SQLException {
		this.database = DriverManager.getConnection("jdbc:h2:mem:");
		run("db/migration/common/V009__audit_record.sql");
		execute("insert into record_head (id, number, digest) values (1, 0, '" + ChainDigest.START + "')");
		run("src/test/resources/audit/record-of-form-1.sql");
	}

	@AfterEach
	void close() throws SQLException {
		this.database.close();
	}

	@Test
	void itsRecordIsVerifiedWithoutTheColumnsOfToday() throws SQLException {
		assertThat(ChainCheck.check(this.database).sentence()).startsWith("The record is whole: 3 lines");
		execute("update record_line set reason = 'other' where number = 2");
		assertThat(ChainCheck.check(this.database).firstBroken()).isEqualTo(2);
	}

	/** It would be read with the others, and nothing would link to it. */
	@Test
	void aLineBeforeTheFirstIsFound() throws SQLException {
		execute("insert into record_line select -1, written_at, actor, role, device, subject, subject_id, action, "
				+ "before_text, after_text, reason, previous_digest, digest from record_line where number = 1");
		assertThat(ChainCheck.check(this.database).sentence())
			.isEqualTo("The record is broken at line -1: it stands before the first line. "
					+ "0 lines before it are as they were written.");
	}

	@Test
	void theMigrationLeavesItsLinesAsTheyAre() throws Exception {
		String before = ChainCheck.check(this.database).sentence();
		assertThat(StoredCheck.isPossible(this.database)).isFalse();
		run(migration());
		assertThat(StoredCheck.isPossible(this.database)).isFalse();
		execute("create table correction (amendment varchar(4000))");
		assertThat(StoredCheck.isPossible(this.database)).isFalse();
		execute("create table result_version (said varchar(20000))");
		assertThat(StoredCheck.isPossible(this.database)).isTrue();
		assertThat(ChainCheck.check(this.database).sentence()).isEqualTo(before);
		assertThat(RecordLineReader.after(this.database, 0)).extracting((record) -> record.link().form())
			.containsOnly(1)
			.hasSize(3);
	}

	private static String migration() throws IOException {
		try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of("db", "migration", "common"),
				"V*__audit_actor_ids_and_evidence.sql")) {
			return files.iterator().next().toString();
		}
	}

	private void run(String file) throws SQLException {
		ScriptUtils.executeSqlScript(this.database, new FileSystemResource(file));
	}

	private void execute(String sql) throws SQLException {
		try (Statement statement = this.database.createStatement()) {
			statement.execute(sql);
		}
	}

}
