package rimebook.audit;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.sql.DataSource;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Every column of every table is compared with the record, or it is said here why not. A
 * new one fails until somebody decides. Shares its application with the other tests of
 * what is stored.
 */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:record;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=20000")
class ComparedTablesIntegrationTests {

	/** Compared by a question of {@link StoredCheck}, beside what lines attest. */
	private static final Map<String, Set<String>> ASKED = Map.of("result_version",
			Set.of("scope_id", "number", "state", "published_at", "fingerprint", "body", "note", "said"),
			"result_signature", Set.of("segment_id", "number", "signatory", "name", "signed_at"), "segment_result",
			Set.of("referee_signature", "referee_signature_id", "referee_signed_at", "accountant_signature",
					"accountant_signature_id", "accountant_signed_at"),
			"segment", Set.of("cancelled", "cancelled_at"), "past_cancellation",
			Set.of("subject_id", "cancelled_at", "brought_back_at"));

	private static final Map<String, String> TABLES_NOT_COMPARED = Map.ofEntries(
			Map.entry("record_line", "the chain itself"), Map.entry("record_head", "the chain itself"),
			Map.entry("record_anchor", "says only whom to ask"), Map.entry("set_up_link", "opens a door"),
			Map.entry("seat_code", "opens a door"), Map.entry("commentary_link", "opens a door"),
			Map.entry("team_link", "opens a door"), Map.entry("team_link_under_way", "opens a door"),
			Map.entry("code_stop", "keeps a door shut"), Map.entry("crew_key", "opens a door"),
			Map.entry("attempt_tally", "counts at a door"),
			Map.entry("former_password", "of passwords nothing is told"),
			Map.entry("spring_session", "who is signed in"), Map.entry("spring_session_attributes", "who is signed in"),
			Map.entry("form_answer", "kept for ten minutes"), Map.entry("paper_bundle", "can be made again"),
			Map.entry("paper_bundle_document", "can be made again"),
			Map.entry("music_chunk", "is known by its digest, which a line attests"),
			Map.entry("spoken_name", "how a name is said changes no result; its lines tell the digest"),
			Map.entry("letter", "of what was written to teams the record tells how much and nothing else"),
			Map.entry("letter_text", "of what was written to teams the record tells how much and nothing else"),
			Map.entry("letter_language", "in which language a team is written to changes no result"),
			Map.entry("skater_apart", "whether somebody is asked whether two are one changes no result"),
			Map.entry("paper_address", "where a sheet leads changes no result"),
			Map.entry("earlier_venue", "what sheets of versions say that do not tell it themselves"),
			Map.entry("service_life", "which copy the service began from"),
			Map.entry("lost_line", "lines of another life of the database"),
			Map.entry("flyway_schema_history", "which tables the database has"));

	private static final Map<String, String> COLUMNS_NOT_COMPARED = Map.ofEntries(
			Map.entry("person.password_hash", "of passwords nothing is told"),
			Map.entry("person.password_temporary", "of passwords nothing is told"),
			Map.entry("person.active", "is always false after a restore"),
			Map.entry("person.created_at", "tells nothing of the day"),
			Map.entry("segment_result.on_ice_entry_id", "shows who skates now, and follows from performances"),
			Map.entry("segment_result.interrupted",
					"shows whether somebody is broken off now, and follows from the clock"),
			Map.entry("result_version.id", "only a key"), Map.entry("past_cancellation.id", "only a key"),
			Map.entry("result_version.scope", "told by the body"),
			Map.entry("result_version.cause", "the kind of act; which act it was, its own line tells"),
			Map.entry("team.carried", "counts changes, so that nobody takes an older look for a newer one"));

	@Autowired
	private DataSource dataSource;

	@Test
	void everyColumnIsComparedOrItIsSaidWhyNot() throws SQLException {
		Set<String> left = new TreeSet<>();
		try (Connection connection = this.dataSource.getConnection();
				ResultSet columns = connection.getMetaData().getColumns(null, "PUBLIC", "%", "%")) {
			while (columns.next()) {
				left.add((columns.getString("TABLE_NAME") + "." + columns.getString("COLUMN_NAME"))
					.toLowerCase(Locale.ROOT));
			}
		}
		assertThat(left).containsAll(attested()).containsAll(asked()).containsAll(COLUMNS_NOT_COMPARED.keySet());
		left.removeAll(attested());
		left.removeAll(asked());
		left.removeAll(COLUMNS_NOT_COMPARED.keySet());
		left.removeIf((column) -> TABLES_NOT_COMPARED.containsKey(column.replaceFirst("\\..*", "")));
		// Counts changes, so that nobody overwrites another's.
		left.removeIf((column) -> column.endsWith(".version"));
		assertThat(left).isEmpty();
	}

	@Test
	void whatIsAttestedIsNotCalledLeftOut() {
		assertThat(attested()).noneMatch((column) -> TABLES_NOT_COMPARED.containsKey(column.replaceFirst("\\..*", "")));
		assertThat(COLUMNS_NOT_COMPARED.keySet()).doesNotContainAnyElementsOf(attested());
	}

	private static Set<String> asked() {
		return ASKED.entrySet()
			.stream()
			.flatMap((table) -> table.getValue().stream().map((column) -> table.getKey() + "." + column))
			.collect(Collectors.toSet());
	}

	/** The column that says whose rows they are is compared by that. */
	private static Set<String> attested() {
		return Evidence.rows()
			.stream()
			.flatMap((rows) -> Stream
				.concat(rows.columns().stream().map(StoredRows.Column::name),
						Stream.of(rows.of().replaceAll("^.* and ", "").replaceAll(" .*$", "")))
				.map((column) -> rows.table() + "." + column))
			.collect(Collectors.toSet());
	}

}
