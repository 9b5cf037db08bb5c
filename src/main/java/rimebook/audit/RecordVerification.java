package rimebook.audit;

import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Tells whether the record is whole, and where it ends. */
@Service
public class RecordVerification {

	private final JdbcTemplate database;

	RecordVerification(JdbcTemplate database) {
		this.database = database;
	}

	/**
	 * Follow the whole chain. Takes about a second for 100,000 lines and holds a few
	 * hundred of them at a time.
	 */
	public RecordFinding verify() {
		ConnectionCallback<RecordFinding> check = ChainCheck::check;
		RecordFinding finding = this.database.execute(check);
		if (finding == null) {
			throw new IllegalStateException("The check gave no finding");
		}
		return finding;
	}

	/**
	 * Compare what is stored with what the lines tell of it; takes as long as reading
	 * every published version, card and correction.
	 */
	public StoredCheck.Finding compareStored() {
		ConnectionCallback<StoredCheck.Finding> check = StoredCheck::check;
		StoredCheck.Finding finding = this.database.execute(check);
		if (finding == null) {
			throw new IllegalStateException("The check gave no finding");
		}
		return finding;
	}

	/** The end of the chain as it is now, unchecked. */
	public Head head() {
		return JdbcClient.create(this.database)
			.sql("select number, digest from record_head where id = 1")
			.query((row, at) -> new Head(row.getLong(1), row.getString(2)))
			.single();
	}

	/**
	 * The end of the chain.
	 *
	 * @param lines how many lines there are
	 * @param digest the digest of the last one, 64 zeros if there is none; printed on
	 * signed documents
	 */
	public record Head(long lines, String digest) {
	}

}
