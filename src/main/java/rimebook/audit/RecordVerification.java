package rimebook.audit;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Tells whether the record is whole, and where it ends. */
@Service
public class RecordVerification {

	private final JdbcTemplate database;

	private final AnchorSigning signing;

	RecordVerification(JdbcTemplate database, AnchorSigning signing) {
		this.database = database;
		this.signing = signing;
	}

	/**
	 * Follow the whole chain, and compare it with anchors. Where some are signed and this
	 * service has the key, only signed ones count.
	 */
	public AnchorCheck.Finding compare(List<Anchor> anchors) {
		RecordFinding chain = verify();
		String key = anchors.stream().anyMatch(Anchor::isSigned) ? this.signing.publicKey().orElse("") : "";
		ConnectionCallback<AnchorCheck.Finding> check = (connection) -> compare(connection, anchors, chain, key);
		AnchorCheck.Finding finding = this.database.execute(check);
		if (finding == null) {
			throw new IllegalStateException("The check gave no finding");
		}
		return finding;
	}

	private static AnchorCheck.Finding compare(Connection connection, List<Anchor> anchors, RecordFinding chain,
			String key) throws SQLException {
		try {
			return AnchorCheck.check(connection, anchors, chain, key);
		}
		catch (IOException ex) {
			throw new IllegalStateException("The key was read when the service began", ex);
		}
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

	/** Look whether time went on from line to line; a sentence for where it did not. */
	public List<String> lookAtTheClock() {
		ConnectionCallback<List<String>> check = ClockCheck::check;
		List<String> notes = this.database.execute(check);
		return (notes != null) ? notes : List.of();
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
