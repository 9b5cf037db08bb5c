package rimebook.audit;

import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * Compares what the database holds with what the lines of the record tell of it: the body
 * of each published version with the digest in its line, each signature with the line of
 * who signed, cancelled segments with the line of who cancelled them, cards, corrections
 * and what was decided at desks with the newest line that attests them. Needs a
 * connection and nothing else, and the tables of today. It believes the lines;
 * {@link ChainCheck} looks at those.
 */
public final class StoredCheck {

	private static final String VERSIONS = """
			select v.scope_id, v.number, v.fingerprint, v.body, v.note, v.said,
			(select count(*) from record_line l where l.subject = 'result' and l.action = 'result.published'
			 and l.subject_id = cast(v.scope_id as varchar(36)) and l.reason = v.note
			 and l.after_text like concat('%, version ', cast(v.number as varchar(10)), ', ', lower(v.state), ', %')
			 and l.after_text like concat('%; fingerprint ', v.fingerprint)
			 and l.written_at between v.published_at - interval '5' minute and v.published_at + interval '5' minute)
			as lines
			from result_version v order by v.scope_id, v.number""";

	private static final String VERSIONS_GONE = """
			select l.number from record_line l where l.subject = 'result' and l.action = 'result.published'
			and not exists (select 1 from result_version v where l.subject_id = cast(v.scope_id as varchar(36))
			 and l.after_text like concat('%; fingerprint ', v.fingerprint)) order by l.number""";

	private static final String SIGNATURES = """
			select r.segment_id, '%1$s' as who, r.%1$s_signature as name, r.%1$s_signature_id as id,
			r.%1$s_signed_at as signed_at, l.number, l.actor, l.actor_id, l.written_at
			from segment_result r left join record_line l on l.number = (select max(s.number) from record_line s
			 where s.subject = 'result' and s.subject_id = cast(r.segment_id as varchar(36))
			 and s.action = 'result.signed' and s.after_text = 'signed as %1$s')
			where r.%1$s_signature <> ''""";

	private static final String HALF_SIGNED = """
			select segment_id from segment_result
			where state = 'OFFICIAL' and (referee_signature = '' or accountant_signature = '')""";

	private static final String ATTESTED = """
			select l.subject, l.subject_id, l.number, l.evidence from record_line l
			join (select max(number) as newest from record_line
			 where form >= 2 and subject in ('%s') group by subject, subject_id) n
			on n.newest = l.number order by l.number""".formatted(String.join("', '", Evidence.subjects()));

	/** As the newest of {@link #ATTESTED}, for one thing. */
	private static final String EVIDENCE = """
			select evidence from record_line where form >= 2 and subject = ? and subject_id = ?
			order by number desc fetch first 1 row only""";

	/** Things that have no line, or none of the form that attests anything. */
	private static final String UNATTESTED = """
			select count(*) from (select cast(id as varchar(36)) as id, 'performance' as subject from performance
			 where id in (select performance_id from card_submission union select performance_id from points_card)
			 union all select cast(id as varchar(36)), 'correction' from correction
			 union all select cast(id as varchar(36)), 'club' from club
			 union all select cast(id as varchar(36)), 'team' from team
			 union all select cast(id as varchar(36)), 'event' from event
			 union all select cast(id as varchar(36)), 'entry' from entry
			 union all select cast(id as varchar(36)), 'official' from official
			 union all select cast(id as varchar(36)), 'seat' from seat
			 union all select cast(segment_id as varchar(36)), 'starting-order' from starting_order group by segment_id
			 union all select cast(id as varchar(36)), 'ruling' from ruling_question
			 union all select cast(id as varchar(36)), 'protest' from protest
			 union all select cast(id as varchar(36)), 'competition' from competition
			 union all select cast(id as varchar(36)), 'person' from person) t
			where not exists (select 1 from record_line l where l.form >= 2 and l.subject = t.subject
			 and l.subject_id = t.id)""";

	/** Things that nobody makes without a line. */
	private static final String WITHOUT_LINE = """
			select t.subject, t.id from (select 'competition' as subject, cast(id as varchar(36)) as id from competition
			 union all select 'event', cast(id as varchar(36)) from event
			 union all select 'entry', cast(id as varchar(36)) from entry
			 union all select 'official', cast(id as varchar(36)) from official
			 union all select 'skater', cast(id as varchar(36)) from skater
			 union all select 'roster-place', cast(id as varchar(36)) from roster_place
			 union all select 'waiver', cast(id as varchar(36)) from waiver
			 union all select distinct 'roster', cast(entry_id as varchar(36)) from team_contact
			 union all select 'retention', cast(competition_id as varchar(36)) from roster_retention
			 union all select 'eligibility', cast(event_id as varchar(36)) from event_rules
			 union all select 'required-list', cast(segment_id as varchar(36)) from required_programme
			 union all select distinct 'arrival', cast(entry_id as varchar(36)) from arrival_note
			 union all select distinct 'lineup', cast(entry_id as varchar(36)) from lineup
			 union all select 'fee', cast(id as varchar(36)) from fee_ledger
			 union all select distinct 'fee-rules', cast(competition_id as varchar(36)) from fee_terms
			 union all select 'ruling', cast(id as varchar(36)) from ruling_question
			 union all select 'protest', cast(id as varchar(36)) from protest
			 union all select 'correction', cast(id as varchar(36)) from correction
			 union all select distinct 'timetable', cast(competition_id as varchar(36)) from timetable_plan
			 union all select distinct 'timetable', cast(competition_id as varchar(36)) from timetable_version) t
			where not exists (select 1 from record_line l where l.subject = t.subject and l.subject_id = t.id)
			order by t.subject, t.id""";

	/** The newest line about whether a segment takes place. */
	private static final String CANCELLATION = """
			select max(number) from record_line where subject = 'segment' and subject_id = cast(s.id as varchar(36))
			and action in ('segment.cancelled', 'segment.brought-back')""";

	private static final String CANCELLED_OTHERWISE = """
			select s.id from segment s left join record_line l on l.number = (%s)
			where (s.cancelled <> '' or l.action = 'segment.cancelled')
			and not (l.number is not null and l.action = 'segment.cancelled' and l.reason = s.cancelled
			 and s.cancelled_at is not null
			 and l.written_at between s.cancelled_at - interval '5' minute and s.cancelled_at + interval '5' minute)
			order by s.id""".formatted(CANCELLATION);

	private static final String CANCELLED_BEFORE_OTHERWISE = """
			select p.subject_id from past_cancellation p
			where not exists (select 1 from record_line l where l.subject_id = cast(p.subject_id as varchar(36))
			 and l.action in ('event.cancelled', 'segment.cancelled')
			 and l.written_at between p.cancelled_at - interval '5' minute and p.cancelled_at + interval '5' minute)
			or not exists (select 1 from record_line l where l.subject_id = cast(p.subject_id as varchar(36))
			 and l.action in ('event.brought-back', 'segment.brought-back')
			 and l.written_at
			  between p.brought_back_at - interval '5' minute and p.brought_back_at + interval '5' minute)
			order by p.subject_id""";

	private static final String SIGNED_OTHERWISE = """
			select s.segment_id, s.number, s.signatory, s.name from result_signature s
			where not exists (select 1 from record_line l where l.subject = 'result'
			 and l.subject_id = cast(s.segment_id as varchar(36)) and l.action = 'result.signed'
			 and l.after_text = concat('signed as ', lower(s.signatory)) and l.actor = s.name
			 and l.written_at between s.signed_at - interval '5' minute and s.signed_at + interval '5' minute)
			order by s.segment_id, s.number, s.signatory""";

	/** A line is written when its act is committed, which may have to wait for others. */
	private static final Duration MOST_LATE = Duration.ofMinutes(5);

	private static final int LOOKS = 3;

	private final Connection connection;

	/** How many things are attested, and how many are stored without. */
	private long things;

	private long unattested;

	private final List<String> faults = new ArrayList<>();

	private StoredCheck(Connection connection) {
		this.connection = connection;
	}

	/**
	 * Tell whether this version of the service has opened the database; only then is
	 * there something to compare.
	 */
	public static boolean isPossible(Connection connection) throws SQLException {
		return RecordLineReader.haveIdentities(connection) && CarriedCorrections.areThere(connection)
				&& hasTheNewestColumn(connection);
	}

	/** A column that came after all others that are compared. */
	private static boolean hasTheNewestColumn(Connection connection) throws SQLException {
		try (ResultSet columns = connection.getMetaData().getColumns(null, null, "%", "%")) {
			while (columns.next()) {
				if (columns.getString("TABLE_NAME").equalsIgnoreCase("result_version")
						&& columns.getString("COLUMN_NAME").equalsIgnoreCase("said")) {
					return true;
				}
			}
		}
		return false;
	}

	/**
	 * Compare everything. What is changed meanwhile is compared as it is then.
	 * @param connection an open connection to the database, left open
	 * @throws SQLException if the tables cannot be read
	 */
	public static Finding check(Connection connection) throws SQLException {
		StoredCheck check = new StoredCheck(connection);
		long versions = check.each(VERSIONS, check::version);
		check.each(VERSIONS_GONE, (row) -> check.faults
			.add("Line " + row.getLong(1) + " tells of a published version that is not stored as it was."));
		long signatures = check.each(SIGNATURES.formatted("referee"), check::signature)
				+ check.each(SIGNATURES.formatted("accountant"), check::signature);
		check.each(HALF_SIGNED, (row) -> check.faults
			.add("The result of segment " + row.getString(1) + " is stored as official without both signatures."));
		check.each(SIGNED_OTHERWISE,
				(row) -> check.faults.add("Version " + row.getInt("number") + " of result "
						+ row.getString("segment_id") + " is stored as signed by " + row.getString("name") + " as "
						+ row.getString("signatory").toLowerCase(Locale.ROOT) + "; no line tells so."));
		check.each(CANCELLED_OTHERWISE, (row) -> check.faults.add("Whether segment " + row.getString(1)
				+ " is cancelled, and why and when, is not stored as its lines tell."));
		check.each(CANCELLED_BEFORE_OTHERWISE, (row) -> check.faults.add("From when to when " + row.getString(1)
				+ " was cancelled before it was brought back is not stored as its lines tell."));
		check.each(WITHOUT_LINE, (row) -> check.faults
			.add("No line of the record tells of " + row.getString(1) + " " + row.getString(2) + ", which is stored."));
		check.each(CarriedCorrections.ALTERED, (row) -> check.faults
			.add("Correction " + row.getString(1) + " is not stored as it was before corrections were amendments."));
		check.each(ATTESTED, check::attested);
		check.each(UNATTESTED, (row) -> check.unattested += row.getLong(1));
		return new Finding(versions, signatures, check.things, check.unattested, check.faults);
	}

	private long each(String sql, Look look) throws SQLException {
		long rows = 0;
		try (Statement statement = this.connection.createStatement(); ResultSet row = statement.executeQuery(sql)) {
			while (row.next()) {
				look.at(row);
				rows++;
			}
		}
		return rows;
	}

	private void version(ResultSet row) throws SQLException {
		String which = "Version " + row.getInt("number") + " of result " + row.getString("scope_id");
		if (!sha256(row.getString("body")).equals(row.getString("fingerprint"))) {
			this.faults.add(which + ": its body was changed after it was published.");
		}
		if (row.getLong("lines") == 0) {
			this.faults.add(which + ": no line of the record tells of it as it is stored.");
		}
		if (!SaidNote.fits(row.getString("said"), row.getString("note"))) {
			this.faults.add(which + ": what it says in other languages is not what its line tells.");
		}
	}

	private void signature(ResultSet row) throws SQLException {
		boolean line = row.getLong("number") > 0;
		boolean same = line && row.getString("name").equals(row.getString("actor"))
				&& (row.getString("actor_id").isEmpty() || row.getString("id").equals(row.getString("actor_id")));
		if (!same || isElsewhen(row)) {
			this.faults.add("The result of segment " + row.getString("segment_id") + " is stored as signed by "
					+ row.getString("name") + " as " + row.getString("who") + "; "
					+ (line ? "line " + row.getLong("number") + " tells otherwise." : "no line tells so."));
		}
	}

	private static boolean isElsewhen(ResultSet row) throws SQLException {
		OffsetDateTime signed = row.getObject("signed_at", OffsetDateTime.class);
		OffsetDateTime written = row.getObject("written_at", OffsetDateTime.class);
		return signed == null || written == null || Duration.between(signed, written).abs().compareTo(MOST_LATE) > 0;
	}

	private void attested(ResultSet row) throws SQLException {
		String subject = row.getString("subject");
		boolean empty = row.getString("evidence").isEmpty();
		if (isAttested(subject, row.getString("subject_id"), row.getString("evidence"))) {
			this.things += empty ? 0 : 1;
		}
		else if (empty && Evidence.cameLater(subject)) {
			this.unattested++;
		}
		else {
			this.faults.add("Line " + row.getLong("number") + " attests another " + what(subject)
					+ " than is stored for " + subject + " " + row.getString("subject_id") + ".");
		}
	}

	private static String what(String subject) {
		return switch (subject) {
			case "performance" -> "set of cards and lists, or course of it,";
			case "result" -> "state or posting";
			case "segment" -> "change of the panel";
			default -> subject;
		};
	}

	/**
	 * Somebody may act on it between the two looks, so what differs is looked at anew.
	 */
	private boolean isAttested(String subject, String id, String evidence) throws SQLException {
		String told = evidence;
		for (int look = 0; look < LOOKS; look++) {
			if (Evidence.fits(this.connection, subject, id, told)) {
				return true;
			}
			told = evidence(subject, id);
		}
		return false;
	}

	private String evidence(String subject, String id) throws SQLException {
		try (PreparedStatement statement = this.connection.prepareStatement(EVIDENCE)) {
			statement.setString(1, subject);
			statement.setString(2, id);
			try (ResultSet row = statement.executeQuery()) {
				return row.next() ? row.getString(1) : "";
			}
		}
	}

	private static String sha256(String body) {
		try {
			byte[] digest = MessageDigest.getInstance("SHA-256").digest(body.getBytes(StandardCharsets.UTF_8));
			return HexFormat.of().formatHex(digest);
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java platform has SHA-256", ex);
		}
	}

	/** What is done with each row. */
	private interface Look {

		void at(ResultSet row) throws SQLException;

	}

	/**
	 * Whether what is stored is what the record tells of it.
	 *
	 * @param versions how many published versions were compared, body and line
	 * @param signatures how many signatures
	 * @param things how many things whose lines attest what is stored
	 * @param unattested how many things have no line that attests anything, as those have
	 * that were last acted on before lines did
	 * @param faults what differs, a sentence each
	 */
	public record Finding(long versions, long signatures, long things, long unattested,
			List<String> faults) implements Serializable {

		/** Many faults have one cause; these are enough to find it. */
		private static final int SHOWN = 20;

		public Finding {
			faults = List.copyOf(faults);
		}

		/** Tell whether nothing differs. */
		public boolean agrees() {
			return this.faults.isEmpty();
		}

		/** The first faults, to be shown. */
		public List<String> shown() {
			return this.faults.subList(0, Math.min(SHOWN, this.faults.size()));
		}

		/** The finding in one sentence; what differs stands in {@link #shown()}. */
		public String sentence() {
			String old = (this.unattested == 0) ? "" : " "
					+ counted(this.unattested, "further thing has", "further things have")
					+ " no line that attests what is stored, as whatever was last acted on before lines did, and "
					+ ((this.unattested == 1) ? "was" : "were") + " not compared.";
			return (agrees() ? "What is stored is what the lines tell: "
					+ counted(this.versions, "published version", "published versions") + ", "
					+ counted(this.signatures, "signature", "signatures") + ", "
					+ counted(this.things, "thing that a line attests", "things that lines attest") + " were compared."
					: "What is stored is not what the lines tell, in " + counted(this.faults.size(), "place", "places")
							+ ".")
					+ old;
		}

		private static String counted(long number, String one, String several) {
			return number + " " + ((number == 1) ? one : several);
		}

	}

}
