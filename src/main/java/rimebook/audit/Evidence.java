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
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

/**
 * The digest of what the database holds of a thing, which the line of each act on it
 * attests. It is SHA-256 over the digests of the rows in ascending order, each over its
 * columns as the chain's fields are. Where nothing is stored it is the digest of no rows:
 * an empty text stands only in lines that attest nothing.
 *
 * <p>
 * What lines attest may grow: {@link #of} is what they attest today, and what
 * {@link #fits} finds equal to that, or to what they attested before, is as it was.
 * Neither can pass for the other, since today's rows are never without a mark of their
 * own. Published versions need none, since their lines tell the digest of the body in
 * words. A correction from before it had an amendment was carried over: its lines attest
 * the columns of then, and {@link StoredCheck} compares both.
 */
final class Evidence {

	/** Stands among the rows of today, so that they are not taken for those of then. */
	private static final String TODAY = ChainDigest.of("rows", "2");

	/** Every table and column of which lines attest something, by kind of thing. */
	private static final Map<String, List<StoredRows>> ROWS = Map.ofEntries(
			Map.entry("performance", List.of(
					StoredRows.of("performance", "id",
							"segment_id entry_id start_number group_number status status_reason "
									+ "called_at closed_at ended_with skate again_for postponed? call_reason"),
					StoredRows.of(
							"card_submission", "performance_id",
							"id seat_id sequence first_mark second_mark origin received_at"),
					StoredRows.of("points_card", "performance_id",
							"id seat_id sequence marks list_sequence origin received_at"),
					StoredRows.of("called_list", "performance_id", "id sequence elements origin called_by received_at"),
					StoredRows.of("list_authorisation", "performance_id",
							"id sequence controller confirmed_by on_paper? received_at"),
					StoredRows.of("deduction_list", "performance_id", "id sequence items origin noted_by received_at"),
					StoredRows.of("deductions_seen", "performance_id",
							"id sequence controller controller_id received_at"),
					StoredRows.of("card_keying", "performance_id",
							"id seat_id number keyed_by keyed_by_id marks outcome card_sequence keyed_at"),
					StoredRows.of("clock_tap", "performance_id",
							"id sequence act cause marking words noted_by noted_at"),
					StoredRows.of("remark", "performance_id", "id kind text noted_by noted_at touch@"),
					StoredRows.of("remark_seen", "performance_id", "id remark_id seat_id seen_at"),
					StoredRows.of("panel_change", "performance_id",
							"id segment_id sequence kind seat_id substitute_id rule reason made_by made_at"))),
			Map.entry("segment",
					List.of(StoredRows.of("panel_change", "performance_id is null and segment_id",
							"id sequence kind seat_id substitute_id rule reason made_by made_at"))),
			Map.entry("correction", List.of(StoredRows.of("correction", "id",
					"segment_id performance_id seat_id protest_id amendment carried? line old_first old_second new_first "
							+ "new_second old_value new_value old_text new_text reason state proposed_by proposed_by_id "
							+ "proposed_at decided_by decided_at decision_reason"))),
			Map.entry("competition",
					List.of(StoredRows.of("competition", "id",
							"slug name place zone first_day last_day rulebook state"))),
			Map.entry("event", List.of(
					StoredRows.of("event", "id",
							"competition_id position slug name method judges even_panel_reason policies rule_set "
									+ "skating_level cancelled cancelled_at signature_waits?"),
					StoredRows.of("segment", "event_id",
							"id position slug name kind factor programme_seconds tolerance_seconds shorter_seconds"))),
			Map.entry("club",
					List.of(StoredRows.of("club", "id", "name town"),
							StoredRows.of("club", "section <> '' and id", "id section"),
							StoredRows.of("club", "merged_into is not null and id", "id merged_into"),
							StoredRows.of("club_contact", "club_id", "mail phone salt"))),
			Map.entry("team",
					List.of(StoredRows.of("team", "id", "club_id name spoken_as"),
							StoredRows.of("team", "merged_from is not null and id", "id merged_from"))),
			Map.entry("entry",
					List.of(StoredRows.of("entry", "id",
							"event_id team_id state late_reason entered_at withdrawn_at withdrawn_reason"),
							StoredRows.of("planned_programme", "entry_id", "id segment_id codes"),
							StoredRows.of("announced_programme", "entry_id", "id segment_id skaters music"))),
			Map.entry("skater",
					List.of(StoredRows.of("skater", "id",
							"club_id given_name family_name birth_date membership_number consent? consent_guardian "
									+ "consent_on salt erased_at merged_into"))),
			Map.entry("roster-place",
					List.of(StoredRows.of("roster_place", "id",
							"entry_id number skater_id role instead_of changed_at merged_from"))),
			Map.entry("roster", List.of(StoredRows.of("team_contact", "entry_id", "id kind name phone mail salt"))),
			Map.entry("eligibility", List.of(StoredRows.of("event_rules", "event_id",
					"copied_from least_on_ice most_on_ice when_fewer most_alternates roster_limit youngest oldest others_youngest "
							+ "others_oldest cut_off age_share alternates_count? one_team? other_skaters "
							+ "membership_number? deadline@"))),
			Map.entry("required-list",
					List.of(StoredRows.of("required_programme", "segment_id",
							"copied_from asked least_elements most_elements"))),
			Map.entry("retention",
					List.of(StoredRows.of("roster_retention", "competition_id",
							"delete_on set_by deleted_at contacts forgotten erased"))),
			Map.entry("waiver", List.of(StoredRows.of("waiver", "id",
					"entry_id rule place_id reason given_by given_at taken_back_reason taken_back_by taken_back_at"))),
			Map.entry("official",
					List.of(StoredRows.of("official", "id", "name club qualification"),
							StoredRows.of("official_interest", "official_id", "id kind team last_day"))),
			Map.entry("seat",
					List.of(StoredRows.of("seat", "id",
							"event_id kind number official_id override_reason override_grounds"))),
			Map.entry("starting-order", List.of(
					StoredRows.of("starting_order", "segment_id",
							"id number method seed group_maximum drawn_at drawn_by reason"),
					StoredRows.of("starting_order", "added > 0 and segment_id", "id added"),
					StoredRows.of("start_position", "order_id in (select id from starting_order where segment_id = ?)",
							"order_id number group_number entry_id ticket ticket_text"))),
			Map.entry("ruling",
					List.of(StoredRows.of("ruling_question", "id",
							"competition_id entry_id segment_id topic text asked_by taken_by asked_at"),
							StoredRows.of("ruling", "question_id",
									"id number verdict allowed_if grounds rule shown? reason given_by given_at"),
							StoredRows.of("ruling_release", "question_id", "id number released? given_by given_at"))),
			Map.entry("protest", List.of(StoredRows.of("protest", "id",
					"segment_id entry_id category text filed_by filed_by_id received_by received_by_id filed_at "
							+ "state grounds unheard decided_by decided_at posting written_at confirmed_by "
							+ "confirmed_by_id confirmed_at"))),
			Map.entry("result",
					List.of(StoredRows.of("segment_result", "segment_id", "state standing_number posted_at posted_by"),
							StoredRows.of("result_posting", "segment_id",
									"id number posted_at posted_by changed conduct_until@ calculation_until@"))),
			Map.entry("music", List.of(
					StoredRows.of("music_version", "entry_id",
							"id segment_id number kind file_name bytes milliseconds sha256 late_reason "
									+ "handed_in_by handed_in_at"),
					StoredRows.of("music_on_site", "entry_id", "id segment_id number on_site? noted_by noted_at"),
					StoredRows.of("music_play", "entry_id", "id segment_id version_id started_at played_by noted_at"),
					StoredRows.of("music_deadline", "competition_id", "id number closes_at set_by set_at"),
					StoredRows.of("music_deletion", "competition_id", "id files bytes deleted_by deleted_at"))),
			Map.entry("lineup",
					List.of(StoredRows.of("lineup", "entry_id", "id segment_id number roster reason kept_by kept_at"))),
			Map.entry("arrival",
					List.of(StoredRows.of("arrival_note", "entry_id", "id place_id number here? noted_by noted_at"))),
			Map.entry("fee",
					List.of(StoredRows.of("fee_ledger", "id",
							"competition_id club_id entry_id number kind amount currency why reverses written_by "
									+ "written_at"))),
			Map.entry("fee-rules",
					List.of(StoredRows.of("fee_terms", "competition_id",
							"id event_id number currency per_team per_skater late_surcharge late_after@ "
									+ "all_back_until@ share_back share_until@ set_by set_at"))),
			Map.entry("letters",
					List.of(StoredRows.of("letter_sending", "competition_id", "id kind way letters made_by made_at"))),
			Map.entry("timetable",
					List.of(StoredRows.of("timetable_plan", "competition_id", "id number act body made_by made_at"),
							StoredRows.of("timetable_version", "competition_id",
									"id number plan_number note body published_by published_at"))),
			Map.entry("person", List.of(StoredRows.of("person", "id", "sign_in_name display_name"),
					StoredRows.of("person_role", "person_id", "role"))));

	private static final Map<String, String> QUESTIONS = ROWS.entrySet()
		.stream()
		.collect(Collectors.toMap(Map.Entry::getKey, (kind) -> StoredRows.question(kind.getValue())));

	private static final Map<String, List<String>> EARLIER = Map.of("performance", List.of("""
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

	private Evidence() {
	}

	/**
	 * The digest of a thing as lines attest it today; empty for a kind of thing of which
	 * they attest nothing. One question to the database, whatever is stored.
	 */
	static String of(Connection connection, String subject, String subjectId) throws SQLException {
		List<StoredRows> kinds = ROWS.get(subject);
		UUID id = identity(subjectId);
		if (kinds == null || id == null) {
			return "";
		}
		List<String> rows = new ArrayList<>(List.of(TODAY));
		try (PreparedStatement statement = connection.prepareStatement(QUESTIONS.get(subject))) {
			for (int parameter = 1; parameter <= kinds.size(); parameter++) {
				statement.setObject(parameter, id);
			}
			try (ResultSet row = statement.executeQuery()) {
				while (row.next()) {
					rows.add(kinds.get(row.getInt(1)).digest(row));
				}
			}
		}
		return of(rows);
	}

	/** The digest of a thing as lines attested it before; empty where they did not. */
	private static String earlier(Connection connection, String subject, String subjectId) throws SQLException {
		UUID id = identity(subjectId);
		List<String> rows = new ArrayList<>();
		for (String sql : (id != null) ? EARLIER.getOrDefault(subject, List.of()) : List.<String>of()) {
			try (PreparedStatement statement = connection.prepareStatement(sql)) {
				statement.setObject(1, id);
				read(statement, rows);
			}
		}
		return rows.isEmpty() ? "" : of(rows);
	}

	/** Tell whether that is what a line attests of the thing as it is stored. */
	static boolean fits(Connection connection, String subject, String subjectId, String told) throws SQLException {
		return of(connection, subject, subjectId).equals(told)
				|| !cameLater(subject) && earlier(connection, subject, subjectId).equals(told);
	}

	private static String of(List<String> rows) {
		return ChainDigest.of(rows.stream().sorted().toArray(String[]::new));
	}

	/** The kinds of things of which lines attest what is stored. */
	static Set<String> subjects() {
		return ROWS.keySet();
	}

	/** The tables, with their columns, of which lines attest something. */
	static List<StoredRows> rows() {
		return ROWS.values().stream().flatMap(List::stream).toList();
	}

	/**
	 * Tell whether there are lines of today's form that attest nothing of such a thing.
	 */
	static boolean cameLater(String subject) {
		return !EARLIER.containsKey(subject);
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
