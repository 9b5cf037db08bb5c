package rimebook.audit;

import java.util.List;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds lines of the record for people to read. */
@Service
class RecordReading {

	private final JdbcClient database;

	RecordReading(JdbcClient database) {
		this.database = database;
	}

	/** The lines that fit, the newest first, 50 a page. */
	@Transactional(readOnly = true)
	public Page read(Query query) {
		RecordSearch search = query.search();
		long found = this.database.sql("select count(*) from record_line" + search.where())
			.params(search.values())
			.query(Long.class)
			.single();
		List<RecordLine> lines = this.database
			.sql("select * from record_line" + search.where()
					+ " order by number desc offset :skipped rows fetch next 50 rows only")
			.params(search.values())
			.param("skipped", query.skipped())
			.query((row, at) -> RecordLineReader.line(row))
			.list();
		return Page.of(lines, found);
	}

	/**
	 * The next lines that fit, the oldest first, to be read a few hundred at a time.
	 * @param number the line after which to begin, 0 at first
	 */
	@Transactional(readOnly = true)
	public List<RecordLine> after(long number, RecordSearch search) {
		return this.database
			.sql("select * from record_line" + search.where() + (search.isForAll() ? " where" : " and")
					+ " number > :after order by number fetch first " + RecordLineReader.AT_ONCE + " rows only")
			.params(search.values())
			.param("after", number)
			.query((row, at) -> RecordLineReader.line(row))
			.list();
	}

	/** The kinds of things that stand on the record, in alphabetical order. */
	@Transactional(readOnly = true)
	public List<String> subjects() {
		return this.database.sql("select distinct subject from record_line order by subject")
			.query((row, number) -> row.getString(1))
			.list();
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
	 * @param page from 1, the newest lines first
	 */
	public record Query(RecordSearch search, int page) {

		static final int PAGE_LENGTH = 50;

		public Query {
			page = Math.max(page, 1);
		}

		/** By the kind of thing and words, either empty for all. */
		static Query of(String subject, String text, int page) {
			return new Query(RecordSearch.of(subject, text), page);
		}

		long skipped() {
			return (this.page - 1L) * PAGE_LENGTH;
		}

	}

}
