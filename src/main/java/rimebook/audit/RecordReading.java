package rimebook.audit;

import java.util.List;
import java.util.Locale;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds lines of the record for people to read. */
@Service
class RecordReading {

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
	public Page read(Query query) {
		long found = fitting("select count(*) " + FITTING, query).query(Long.class).single();
		List<RecordLine> lines = fitting(
				"select * " + FITTING + " order by number desc offset :skipped rows fetch next 50 rows only", query)
			.param("skipped", query.skipped())
			.query((row, at) -> RecordLineReader.line(row))
			.list();
		return Page.of(lines, found);
	}

	/** The kinds of things that stand on the record, in alphabetical order. */
	@Transactional(readOnly = true)
	public List<String> subjects() {
		return this.database.sql("select distinct subject from record_line order by subject")
			.query((row, number) -> row.getString(1))
			.list();
	}

	private JdbcClient.StatementSpec fitting(String sql, Query query) {
		return this.database.sql(sql).param("subject", query.subject()).param("text", pattern(query.text()));
	}

	private static String pattern(String text) {
		return "%" + text.toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
	}

	/**
	 * Some lines of the record, the newest first.
	 *
	 * @param lines the lines of this page
	 * @param found how many lines fit in all
	 * @param pages how many pages they fill, at least 1
	 */
	public record Page(List<RecordLine> lines, long found, long pages) {

		static Page of(List<RecordLine> lines, long found) {
			long pages = Math.max(1, (found + Query.PAGE_LENGTH - 1) / Query.PAGE_LENGTH);
			return new Page(List.copyOf(lines), found, pages);
		}

	}

	/**
	 * Which lines to show.
	 *
	 * @param subject the kind of thing, empty for all
	 * @param text words to find in who, what, before, after or why; empty for all
	 * @param page from 1, the newest lines first
	 */
	public record Query(String subject, String text, int page) {

		static final int PAGE_LENGTH = 50;

		public Query {
			subject = subject.strip();
			text = text.strip();
			page = Math.max(page, 1);
		}

		long skipped() {
			return (this.page - 1L) * PAGE_LENGTH;
		}

	}

}
