package rimebook.protests;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.ConflictException;

/** A protest from its filing to its decision. */
@Entity
class Protest {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	@Column(name = "segment_id")
	private UUID segment;

	@Column(name = "entry_id")
	private UUID entry;

	@Enumerated(EnumType.STRING)
	private ProtestCategory category;

	private String text;

	private String filedBy;

	private String receivedBy;

	private Instant filedAt;

	@Enumerated(EnumType.STRING)
	private ProtestState state = ProtestState.FILED;

	private String grounds = "";

	private String decidedBy = "";

	private @Nullable Instant decidedAt;

	@SuppressWarnings("NullAway.Init")
	protected Protest() {
	}

	Protest(UUID id, FileProtest filed, String text, String filedBy, String receivedBy, Instant filedAt) {
		this.id = id;
		this.segment = filed.segment().value();
		this.entry = filed.entry().value();
		this.category = filed.category();
		this.text = text;
		this.filedBy = filedBy;
		this.receivedBy = receivedBy;
		this.filedAt = filedAt;
	}

	/** Close it unheard. */
	void refuse(String rule, Instant now) {
		end(ProtestState.REFUSED, rule, "Rimebook, by rule", now);
	}

	void decide(boolean upheld, String grounds, String referee, Instant now) {
		if (this.filedBy.equals(referee)) {
			throw new ConflictException("own-protest", "Nobody decides a protest that they filed.");
		}
		end(upheld ? ProtestState.UPHELD : ProtestState.DENIED, grounds, referee, now);
	}

	private void end(ProtestState next, String grounds, String by, Instant now) {
		if (this.state != ProtestState.FILED) {
			throw new ConflictException("protest-decided",
					"This protest was " + this.state.name().toLowerCase() + " already.");
		}
		this.state = next;
		this.grounds = grounds;
		this.decidedBy = by;
		this.decidedAt = now;
	}

	/** Refuse an act that was decided on an older look at this protest. */
	void requireVersion(int seen) {
		if (this.version != null && this.version != seen) {
			throw ConflictException.stale("protest");
		}
	}

	ProtestView view() {
		return new ProtestView(new ProtestId(this.id), new SegmentId(this.segment), new EntryId(this.entry),
				this.category, this.text, this.filedBy, this.receivedBy, this.filedAt, this.state, this.grounds,
				this.decidedBy, this.decidedAt, (this.version != null) ? this.version : 0);
	}

}
