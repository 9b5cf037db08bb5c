package rimebook.results;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

import rimebook.competition.SegmentId;

/** A posting as it is kept; never changed. */
@Entity
@Table(name = "result_posting")
class PostingRow {

	@Id
	private UUID id;

	@Column(name = "segment_id")
	private UUID segment;

	private int number;

	private Instant postedAt;

	private String postedBy;

	private String changed;

	private Instant conductUntil;

	private Instant calculationUntil;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PostingRow() {
	}

	PostingRow(UUID id, SegmentResultView.Posting posting) {
		this.id = id;
		this.segment = posting.segment().value();
		this.number = posting.number();
		this.postedAt = posting.postedAt();
		this.postedBy = posting.postedBy();
		this.changed = posting.changed();
		this.conductUntil = posting.conductUntil();
		this.calculationUntil = posting.calculationUntil();
	}

	SegmentResultView.Posting view() {
		return new SegmentResultView.Posting(new SegmentId(this.segment), this.number,
				new SegmentResultView.Posted(this.postedAt, this.postedBy), this.changed, this.conductUntil,
				this.calculationUntil);
	}

}
