package rimebook.arrival;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.competition.SegmentId;
import rimebook.rosters.KeptRoster;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** Who was on the ice for a team in a segment, as somebody knew it: written once. */
@Entity
@Immutable
@Table(name = "lineup")
class Lineup extends AppendedRow {

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private UUID segment;

	private int number;

	private String roster;

	private String reason;

	private String keptBy;

	private Instant keptAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Lineup() {
	}

	Lineup(UUID id, SegmentId segment, int number, KeptRoster roster, Kept kept) {
		super(id);
		this.entry = roster.entry().value();
		this.segment = segment.value();
		this.number = number;
		this.roster = roster.text();
		this.reason = kept.reason();
		this.keptBy = kept.by().name();
		this.keptAt = kept.at();
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	int number() {
		return this.number;
	}

	KeptRoster roster() {
		return KeptRoster.read(this.roster);
	}

	String reason() {
		return this.reason;
	}

	CheckIn.Seen kept() {
		return new CheckIn.Seen(this.keptBy, this.keptAt);
	}

	/**
	 * That it was kept.
	 *
	 * @param reason why it was kept otherwise than when the team was called; empty then
	 */
	record Kept(Actor by, Instant at, String reason) {
	}

}
