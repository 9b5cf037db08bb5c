package rimebook.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Gives out what others keep of the record: on paper, on pages, on tablets, in a second
 * place. What a line was is told by its number and digest; both stay the same for ever.
 */
@Service
public class RecordAnchors {

	private static final Log log = LogFactory.getLog(RecordAnchors.class);

	private static final String OF_VERSION = """
			select number, digest, written_at from record_line
			where subject = 'result' and subject_id = :scope and action = 'result.published'
			and after_text like concat('%, version ', cast(:number as varchar(10)), ', %; fingerprint ', :fingerprint)
			order by number fetch first 1 row only""";

	private static final String HEAD = """
			select l.number, l.digest, l.written_at from record_head h join record_line l on l.number = h.number
			where h.id = 1""";

	private static final String KEEP = """
			merge into record_anchor a using (select cast(:place as varchar(120)) as place) n on a.place = n.place
			when matched then update set line = :line, digest = :digest, kept_at = :at
			when not matched then insert (place, line, digest, kept_at) values (n.place, :line, :digest, :at)""";

	private static final String KEEP_FOR_GOOD = KEEP.replace("when matched then", """
			when matched and (a.line < :line or not exists (select 1 from record_line l
			 where l.number = a.line and l.digest like concat(a.digest, '%'))) then""");

	private static final String KEPT = """
			select a.place, a.line, a.digest, a.kept_at, l.number as fits from record_anchor a
			left join record_line l on l.number = a.line and l.digest like concat(a.digest, '%')
			order by a.line desc, a.place""";

	private static final String NEWEST_ABOUT = """
			select number, digest, written_at from record_line
			where number = (select max(number) from record_line where subject_id in (:things))""";

	private static final int LONGEST_PLACE = 120;

	private final JdbcClient database;

	private final AnchorSigning signing;

	private final Clock clock;

	private final TransactionTemplate apart;

	RecordAnchors(JdbcClient database, AnchorSigning signing, Clock clock, PlatformTransactionManager transactions) {
		this.database = database;
		this.signing = signing;
		this.clock = clock;
		this.apart = new TransactionTemplate(transactions);
		this.apart.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
	}

	/**
	 * The end of the record as it is now, for whoever keeps one elsewhere.
	 * @return empty while nothing stands on the record
	 */
	public Optional<Anchor> head() {
		return this.database.sql(HEAD).query((row, at) -> anchor(row)).optional().map(this.signing::sign);
	}

	/**
	 * The line that tells of a published version. It and all before it are the same for
	 * as long as its digest is.
	 * @param scopeId the segment or event whose standing it is
	 * @param number which version
	 * @param fingerprint the fingerprint of its body
	 * @return empty if no line tells of such a version
	 */
	public Optional<Anchor> ofVersion(UUID scopeId, int number, String fingerprint) {
		return this.database.sql(OF_VERSION)
			.param("scope", scopeId.toString())
			.param("number", number)
			.param("fingerprint", fingerprint)
			.query((row, at) -> anchor(row))
			.optional()
			.map(this.signing::sign);
	}

	/**
	 * The newest line that tells of one of these things. It is the same in a database
	 * into which they were restored.
	 * @param things identities of what lines are about
	 * @return empty if no line tells of any
	 */
	public Optional<Anchor> newestAbout(Collection<UUID> things) {
		if (things.isEmpty()) {
			return Optional.empty();
		}
		return this.database.sql(NEWEST_ABOUT)
			.param("things", things.stream().map(UUID::toString).toList())
			.query((row, at) -> anchor(row))
			.optional();
	}

	/** A line by its number, for whoever keeps it or says so. */
	public Optional<Anchor> ofLine(long number) {
		return this.database.sql("select number, digest, written_at from record_line where number = :number")
			.param("number", number)
			.query((row, at) -> anchor(row))
			.optional()
			.map(this.signing::sign);
	}

	/**
	 * Note that a place outside this database holds an anchor, which replaces the one it
	 * was known to hold. It is only where to look: what is noted here proves nothing.
	 *
	 * <p>
	 * Whatever happens, the caller's act goes on: it is written in a transaction of its
	 * own, and what goes wrong is only logged. So call it when the place has the anchor,
	 * after the commit of the act, and not while holding rows.
	 * @param place where, as people look for it, in English like all that the crew reads:
	 * "Tablet of Judge 3, Junior", "Second place", "Paper: Junior, Free skating"; of a
	 * longer one the first 120 characters. Of each place one anchor is known, so that a
	 * second print of the same paper is the same place.
	 */
	public void noteKept(String place, Anchor anchor) {
		note(KEEP, place, anchor);
	}

	/**
	 * As {@link #noteKept}, of a place that keeps whatever it was given, as paper does:
	 * an older anchor does not take the place of a newer one, which covers whatever the
	 * older one does. One that fits no line any more, as after the service went on from
	 * an earlier copy, gives way to any.
	 */
	public void noteKeptForGood(String place, Anchor anchor) {
		note(KEEP_FOR_GOOD, place, anchor);
	}

	private void note(String sql, String place, Anchor anchor) {
		try {
			this.apart.executeWithoutResult((status) -> write(sql, place, anchor));
		}
		catch (RuntimeException ex) {
			log.warn("That '" + place + "' keeps line " + anchor.line() + " of the record could not be noted", ex);
		}
	}

	private void write(String sql, String place, Anchor anchor) {
		this.database.sql(sql)
			.param("place", place.substring(0, Math.min(LONGEST_PLACE, place.length())))
			.param("line", anchor.line())
			.param("digest", anchor.digest())
			.param("at", OffsetDateTime.ofInstant(this.clock.instant().truncatedTo(ChronoUnit.MILLIS), ZoneOffset.UTC))
			.update();
	}

	/** Which places are known to hold an anchor, those that hold the newest first. */
	List<Kept> kept() {
		return this.database.sql(KEPT)
			.query((row, at) -> new Kept(row.getString("place"), row.getLong("line"), row.getString("digest"),
					row.getObject("kept_at", OffsetDateTime.class).toInstant(), row.getLong("fits") > 0))
			.list();
	}

	private static Anchor anchor(ResultSet row) throws SQLException {
		return Anchor.of(row.getLong("number"), row.getString("digest"),
				row.getObject("written_at", OffsetDateTime.class).toInstant());
	}

	/**
	 * The anchor that a place was last known to hold.
	 *
	 * @param fits whether the record has that line with that digest now
	 */
	record Kept(String place, long line, String digest, Instant at, boolean fits) {
	}

}
