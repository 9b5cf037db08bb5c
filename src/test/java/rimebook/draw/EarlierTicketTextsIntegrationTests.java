package rimebook.draw;

import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessException;

import rimebook.testsupport.EarlierDatabase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Orders that were drawn before the texts of their tickets were kept. */
class EarlierTicketTextsIntegrationTests {

	private static final List<String> TEAMS = List.of("Embers", "A\u030asvind", "O'Hara's Row");

	private final EarlierDatabase database = database();

	private final UUID order = UUID.randomUUID();

	/** An empty database. */
	EarlierDatabase database() {
		return EarlierDatabase.onH2();
	}

	@Test
	void getTheTextThatGivesTheirTicketAndStayUnchangeable() {
		this.database.migrate("115?");
		draw();
		this.database.migrate("latest");
		assertThat(this.database.sql()
			.sql("select ticket, ticket_text from start_position order by number")
			.query((row, at) -> new DrawTicket(row.getString("ticket_text")).hex().equals(row.getString("ticket"))
					? row.getString("ticket_text") : "differs")
			.list()).containsExactly("seed|Free skating|Embers|North Quay", "seed|Free skating|\u00c5svind|North Quay",
					"seed|Free skating|O'Hara's Row|North Quay");
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql().sql("update start_position set ticket_text = 'another'").update());
	}

	private void draw() {
		EarlierDatabase.Field field = this.database.field();
		this.database.write("insert into starting_order (id, segment_id, number, method, seed, group_maximum, "
				+ "drawn_at, drawn_by, reason) values (?, ?, 1, 'WHOLE_FIELD', 'seed', 4, current_timestamp, 'Ines Harrow', '')",
				this.order, field.segment());
		for (int number = 1; number <= TEAMS.size(); number++) {
			start(number, field);
		}
	}

	private void start(int number, EarlierDatabase.Field field) {
		String name = TEAMS.get(number - 1);
		this.database.write(
				"insert into start_position (order_id, number, group_number, entry_id, ticket) values (?, ?, 1, ?, ?)",
				this.order, number, this.database.entry(field, name),
				DrawTicket.of("seed", "Free skating", name, "North Quay").hex());
	}

}
