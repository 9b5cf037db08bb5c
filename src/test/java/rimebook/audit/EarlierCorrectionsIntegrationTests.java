package rimebook.audit;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;

import rimebook.testsupport.EarlierCorrections;
import rimebook.testsupport.EarlierDatabase;

import static org.assertj.core.api.Assertions.assertThat;

/** A database in which corrections were proposed before they were amendments. */
class EarlierCorrectionsIntegrationTests {

	private static final String ROW = """
			insert into correction (id, version, segment_id, performance_id, proposed_at, line, old_first, old_second,
			new_first, new_second, old_value, new_value, old_text, new_text, reason, state, proposed_by, decided_by,
			decision_reason)
			values (?, 0, ?, ?, current_timestamp, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'Slip.', 'PROPOSED', 'Ines Harrow', '', '')""";

	private final EarlierDatabase database = database();

	private final UUID performance = UUID.randomUUID();

	/** An empty database. */
	EarlierDatabase database() {
		return EarlierDatabase.onH2();
	}

	@Test
	void areCarriedOverAndStillAttestedByTheirLines() throws SQLException {
		this.database.migrate("117");
		UUID segment = performance();
		List<UUID> ids = EarlierCorrections.all().stream().map((earlier) -> correction(segment, earlier)).toList();
		this.database.migrate("latest");
		for (int i = 0; i < ids.size(); i++) {
			assertThat(amendment(ids.get(i))).isEqualTo(EarlierCorrections.all().get(i).amendment());
		}
		assertThat(altered()).isEmpty();
		for (UUID id : ids) {
			String before = amendment(id);
			this.database.write("update correction set amendment = ? where id = ?", before.replace("after", "atter"),
					id);
			assertThat(altered())
				.containsExactly("Correction " + id + " is not stored as it was before corrections were amendments.");
			this.database.write("update correction set amendment = ? where id = ?", before, id);
		}
	}

	@Test
	void theLineOfACorrectionAttestsItAsItWas() throws SQLException {
		this.database.migrate("117");
		UUID id = correction(performance(), EarlierCorrections.all().get(0));
		String attested = ChainDigest.of(ChainDigest.of(earlier(id)));
		this.database.migrate("latest");
		try (Connection connection = this.database.source().getConnection()) {
			assertThat(Evidence.fits(connection, "correction", id.toString(), attested)).isTrue();
			this.database.write("update correction set carried = false where id = ?", id);
			assertThat(Evidence.fits(connection, "correction", id.toString(), attested)).isFalse();
		}
	}

	/** The columns that were attested then, as the service wrote them. */
	private String[] earlier(UUID id) {
		return this.database.sql()
			.sql("""
					select 'correction', id, segment_id, performance_id, seat_id, protest_id, line, old_first, old_second,
					new_first, new_second, old_value, new_value, old_text, new_text, reason, state, proposed_by,
					proposed_at, decided_by, decided_at, decision_reason from correction where id = ?""")
			.param(id)
			.query((row, at) -> {
				List<String> fields = new ArrayList<>();
				for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
					String text = (column == 19)
							? ChainDigest.time(row.getObject(column, java.time.OffsetDateTime.class).toInstant())
							: row.getString(column);
					fields.add((text != null) ? text : "");
				}
				return fields.toArray(String[]::new);
			})
			.single();
	}

	/** What is put in here without lines is told apart. */
	private List<String> altered() throws SQLException {
		try (Connection connection = this.database.source().getConnection()) {
			return StoredCheck.check(connection)
				.faults()
				.stream()
				.filter((fault) -> !fault.startsWith("No line of the record tells of "))
				.toList();
		}
	}

	private String amendment(UUID id) {
		return this.database.sql()
			.sql("select amendment from correction where id = ?")
			.param(id)
			.query(String.class)
			.single();
	}

	private UUID correction(UUID segment, EarlierCorrections earlier) {
		UUID id = UUID.randomUUID();
		List<Object> values = new ArrayList<>(List.of(id, segment, this.performance));
		values.addAll(earlier.columns());
		this.database.write(ROW, values.toArray());
		return id;
	}

	/** One whose cards are closed; its segment. */
	private UUID performance() {
		EarlierDatabase.Field field = this.database.field();
		this.database.write(
				"insert into performance (id, version, segment_id, entry_id, start_number, group_number, "
						+ "status, status_reason) values (?, 0, ?, ?, 1, 1, 'CLOSED', '')",
				this.performance, field.segment(), this.database.entry(field, "Embers"));
		return field.segment();
	}

}
