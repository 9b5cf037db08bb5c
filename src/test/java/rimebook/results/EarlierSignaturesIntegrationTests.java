package rimebook.results;

import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessException;

import rimebook.competition.SegmentId;
import rimebook.testsupport.EarlierDatabase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Results that were signed before signatures were kept with their version. */
class EarlierSignaturesIntegrationTests {

	private final EarlierDatabase database = database();

	/** An empty database. */
	EarlierDatabase database() {
		return EarlierDatabase.onH2();
	}

	@Test
	void areKeptWithTheVersionThatTheyMadeAndStayUnchangeable() {
		this.database.migrate("150?");
		SegmentId segment = new SegmentId(this.database.field().segment());
		this.database.write("insert into segment_result (segment_id, version, state, standing_number, posted_at, "
				+ "posted_by, referee_signature, referee_signed_at, accountant_signature, accountant_signed_at) values "
				+ "(?, 5, 'OFFICIAL', 7, current_timestamp, 'Bo Tally', 'Runa Hale', '2027-02-13T12:00:00Z', 'Bo Tally', "
				+ "'2027-02-13T12:05:00Z')", segment.value());
		this.database.migrate("latest");
		SignatureBook book = new SignatureBook(this.database.sql());
		assertThat(book.of(segment, 7)).extracting((one) -> one.name() + " " + one.at())
			.containsExactly("Runa Hale 2027-02-13T12:00:00Z", "Bo Tally 2027-02-13T12:05:00Z");
		assertThat(book.of(segment, 6)).isEmpty();
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql().sql("update result_signature set name = 'Somebody'").update());
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql().sql("delete from result_signature").update());
	}

}
