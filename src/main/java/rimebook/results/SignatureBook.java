package rimebook.results;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;

/**
 * Keeps with each version that was signed who signed it; never changed. The result itself
 * forgets them when it is opened again.
 */
@Component
class SignatureBook {

	private final JdbcClient database;

	SignatureBook(JdbcClient database) {
		this.database = database;
	}

	/** Keep both signatures of an official result with the version that they made. */
	void keep(SegmentResult result, int number) {
		SegmentResultView.Signatures both = result.view().signatures();
		for (Signatories.Signatory signatory : Signatories.Signatory.values()) {
			SegmentResultView.Signature signature = both.of(signatory);
			Instant at = Objects.requireNonNull(signature.at());
			this.database.sql("insert into result_signature values (?, ?, ?, ?, ?)")
				.params(result.segment().value(), number, signatory.name(), signature.name(),
						at.atOffset(ZoneOffset.UTC))
				.update();
		}
	}

	/** The referee's and the accountant's; empty where the version is not signed. */
	List<SegmentResultView.Signature> of(SegmentId segment, int number) {
		return this.database
			.sql("select name, signed_at from result_signature where segment_id = ? and number = ? "
					+ "order by signatory desc")
			.params(segment.value(), number)
			.query((row, at) -> new SegmentResultView.Signature(row.getString("name"),
					row.getObject("signed_at", OffsetDateTime.class).toInstant()))
			.list();
	}

}
