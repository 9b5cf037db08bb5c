package rimebook.audit;

import java.util.List;
import java.util.Locale;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds lines of the record for people to read. */
@Service
public class RecordReading {

	private static final String FITTING = """
			from record_line
			where (:subject = '' or subject = :subject)
			and (:text = '%%'
			 or lower(actor) like :text escape '!' or lower(actor_id) like :text escape '!'
			 or lower(subject_id) like :text escape '!'
			 or lower(action) like :text escape '!' or lower(before_text) like :text escape '!'
			 or lower(after_text) like :text escape '!' or lower(reason) like :text escape '!')
			""";

	private final JdbcClient database;

	RecordReading(JdbcClient database) {
		this.database = database;
	}

	/** The lines that fit, the newest first, 50 a page. */
	@Transactional(readOnly = true)
	public RecordPage read(RecordQuery query) {
		long found = fitting("select count(*) " + FITTING, query).query(Long.class).single();
		List<RecordLine> lines = fitting(
				"select * " + FITTING + " order by number desc offset :skipped rows fetch next 50 rows only", query)
			.param("skipped", query.skipped())
			.query((row, at) -> RecordLines.line(row))
			.list();
		return RecordPage.of(lines, found);
	}

	/** The kinds of things that stand on the record, in alphabetical order. */
	@Transactional(readOnly = true)
	public List<String> subjects() {
		return this.database.sql("select distinct subject from record_line order by subject")
			.query((row, number) -> row.getString(1))
			.list();
	}

	private JdbcClient.StatementSpec fitting(String sql, RecordQuery query) {
		return this.database.sql(sql).param("subject", query.subject()).param("text", pattern(query.text()));
	}

	private static String pattern(String text) {
		return "%" + text.toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
	}

}
