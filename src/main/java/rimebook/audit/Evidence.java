package rimebook.audit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

/**
 * The digest of what the database holds of a thing, which the line of each act on it
 * attests: every version of the cards, called elements and deductions of a performance, a
 * correction as a whole, and what of a competition is decided at desks. It is SHA-256
 * over the digests of the rows in ascending order, each over its columns as the chain's
 * fields are.
 *
 * <p>
 * The columns are named one by one: one that is added later does not change what was
 * attested before. Published versions need none, since their lines tell the digest of the
 * body in words. A correction from before it had an amendment was carried over: its lines
 * attest the columns of then, and {@link StoredCheck} compares both.
 */
final class Evidence {

	/** What lines attested from the day on which they attested anything. */
	private static final Map<String, List<String>> FIRST = Map.of("performance", List.of("""
			select 'card', id, seat_id, sequence, first_mark, second_mark, origin, received_at
			from card_submission where performance_id = ?""", """
			select 'points', id, seat_id, sequence, marks, list_sequence, origin, received_at
			from points_card where performance_id = ?""", """
			select 'elements', id, sequence, elements, origin, called_by, received_at
			from called_list where performance_id = ?""", """
			select 'deductions', id, sequence, items, origin, noted_by, received_at
			from deduction_list where performance_id = ?"""), "correction", List.of("""
			select 'correction', id, segment_id, performance_id, seat_id, protest_id, line, old_first, old_second,
			new_first, new_second, old_value, new_value, old_text, new_text, reason, state, proposed_by, proposed_at,
			decided_by, decided_at, decision_reason
			from correction where id = ?""", """
			select 'amendment', id, amendment from correction where id = ? and not carried"""));

	/**
	 * What lines attest since then; earlier lines about it attest nothing. Truth and
	 * falsehood are spelled by every database in its own way, and of passwords nothing is
	 * told.
	 */
	private static final Map<String, List<String>> LATER = Map.of("competition", List.of("""
			select 'competition', id, slug, name, place, zone, first_day, last_day, rulebook, state
			from competition where id = ?"""), "event", List.of("""
			select 'event', id, competition_id, slug, name, method, judges, even_panel_reason, policies,
			rule_set, skating_level, cancelled, cancelled_at,
			case when signature_waits then 'waits' else 'at once' end
			from event where id = ?""", """
			select 'segment', id, position, slug, name, kind, factor, programme_seconds, tolerance_seconds,
			shorter_seconds from segment where event_id = ?"""), "entry", List.of("""
			select 'entry', id, event_id, team_id, state, late_reason, entered_at, withdrawn_at, withdrawn_reason
			from entry where id = ?"""), "official", List.of("""
			select 'official', id, name, club, qualification from official where id = ?""", """
			select 'interest', id, kind, team, last_day from official_interest where official_id = ?"""), "seat",
			List.of("""
					select 'seat', id, event_id, kind, number, official_id, override_reason, override_grounds
					from seat where id = ?"""), "starting-order", List.of("""
					select 'order', id, number, method, seed, group_maximum, drawn_at, drawn_by, reason
					from starting_order where segment_id = ?""", """
					select 'start', p.order_id, p.number, p.group_number, p.entry_id, p.ticket
					from start_position p join starting_order o on o.id = p.order_id where o.segment_id = ?"""),
			"ruling", List.of("""
					select 'question', id, entry_id, topic, text, asked_by, taken_by, asked_at
					from ruling_question where id = ?""", """
					select 'ruling', id, number, verdict, allowed_if, grounds, rule,
					case when shown then 'shown' else 'not shown' end, reason, given_by, given_at
					from ruling where question_id = ?"""), "protest", List.of("""
					select 'protest', id, segment_id, entry_id, category, text, filed_by, received_by, filed_at, state,
					grounds, decided_by, decided_at, posting, written_at, confirmed_by, confirmed_at
					from protest where id = ?"""), "result", List.of("""
					select 'posting', id, number, posted_at, posted_by, changed, conduct_until as conduct_at,
					calculation_until as calculation_at from result_posting where segment_id = ?"""), "person",
			List.of("""
					select 'person', id, sign_in_name, display_name, case when active then 'in' else 'out' end
					from person where id = ?""", """
					select 'role', person_id, role from person_role where person_id = ?"""));

	private Evidence() {
	}

	/**
	 * The digest for a thing, empty where nothing is stored of it, or of another kind.
	 */
	static String of(Connection connection, String subject, String subjectId) throws SQLException {
		UUID id = identity(subjectId);
		List<String> rows = new ArrayList<>();
		List<String> stored = FIRST.getOrDefault(subject, LATER.getOrDefault(subject, List.of()));
		for (String sql : (id != null) ? stored : List.<String>of()) {
			try (PreparedStatement statement = connection.prepareStatement(sql)) {
				statement.setObject(1, id);
				read(statement, rows);
			}
		}
		return rows.isEmpty() ? "" : ChainDigest.of(rows.stream().sorted().toArray(String[]::new));
	}

	/** The kinds of things of which lines attest what is stored. */
	static List<String> subjects() {
		return Stream.of(FIRST, LATER).flatMap((kinds) -> kinds.keySet().stream()).sorted().toList();
	}

	/**
	 * Tell whether there are lines of today's form that attest nothing of such a thing.
	 */
	static boolean cameLater(String subject) {
		return LATER.containsKey(subject);
	}

	private static @Nullable UUID identity(String subjectId) {
		try {
			return UUID.fromString(subjectId);
		}
		catch (IllegalArgumentException ex) {
			return null;
		}
	}

	private static void read(PreparedStatement statement, List<String> rows) throws SQLException {
		try (ResultSet row = statement.executeQuery()) {
			while (row.next()) {
				rows.add(digest(row));
			}
		}
	}

	private static String digest(ResultSet row) throws SQLException {
		ResultSetMetaData columns = row.getMetaData();
		String[] fields = new String[columns.getColumnCount()];
		for (int column = 1; column <= fields.length; column++) {
			boolean time = columns.getColumnLabel(column).toLowerCase(Locale.ROOT).endsWith("_at");
			fields[column - 1] = time ? time(row, column) : text(row, column);
		}
		return ChainDigest.of(fields);
	}

	private static String time(ResultSet row, int column) throws SQLException {
		OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
		return (time != null) ? ChainDigest.time(time.toInstant()) : "";
	}

	private static String text(ResultSet row, int column) throws SQLException {
		String text = row.getString(column);
		return (text != null) ? text : "";
	}

}
