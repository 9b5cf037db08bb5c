package rimebook.protests;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.SentenceJson;
import rimebook.wording.Sentence;

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
	private ProtestView.ProtestCategory category;

	private String text;

	private String filedBy;

	private String filedById;

	private String receivedBy;

	private Instant filedAt;

	private @Nullable Instant writtenAt;

	private int posting;

	private String receivedById = "";

	private String confirmedBy = "";

	private String confirmedById = "";

	private @Nullable Instant confirmedAt;

	@Enumerated(EnumType.STRING)
	private ProtestView.State state = ProtestView.State.FILED;

	private String grounds = "";

	/** Why it is not heard; of rows from before the words alone are kept, as grounds. */
	@Convert(converter = SentenceJson.class)
	private @Nullable Sentence unheard;

	private String decidedBy = "";

	private @Nullable Instant decidedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Protest() {
	}

	Protest(UUID id, Protests.FileProtest filed, String text, String filedBy, Receipt receipt) {
		this.id = id;
		this.segment = filed.segment().value();
		this.entry = filed.claim().entry().value();
		this.category = filed.claim().category();
		this.text = text;
		this.filedBy = filedBy;
		this.filedById = receipt.filer();
		this.receivedBy = receipt.by().name();
		this.receivedById = receipt.by().id();
		this.filedAt = receipt.handedIn();
		this.writtenAt = receipt.now();
		this.posting = receipt.posting();
	}

	/** Let it wait for a second name: the time was over when it was written down. */
	void claimEarlier() {
		this.state = ProtestView.State.UNCONFIRMED;
	}

	/** Confirm that it was handed in when it says so, or close it unheard. */
	void confirm(boolean inTime, String grounds, Actor by, Instant now) {
		if (this.state != ProtestView.State.UNCONFIRMED) {
			throw new ConflictException("protest-confirmed", Sentence.of("protests.nothing-to-confirm"));
		}
		if (this.receivedById.equals(by.id())) {
			throw new ConflictException("two-names-needed", Sentence.of("protests.two-names-needed", this.receivedBy));
		}
		this.confirmedBy = by.name();
		this.confirmedById = by.id();
		this.confirmedAt = now;
		this.state = ProtestView.State.FILED;
		if (!inTime) {
			closeUnheard(Sentence.of("protests.unheard.not-confirmed", grounds), by.name(), now);
		}
	}

	/** Close it unheard. */
	void refuse(Sentence rule, Instant now) {
		closeUnheard(rule, "Rimebook, by rule", now);
	}

	private void closeUnheard(Sentence why, String by, Instant now) {
		end(ProtestView.State.REFUSED, "", by, now);
		this.unheard = why;
	}

	void decide(boolean upheld, String grounds, Actor referee, Instant now) {
		if (referee.hasId(this.filedById) || referee.goesBy(this.filedBy)) {
			throw new ConflictException("own-protest", Sentence.of("protests.own-protest"));
		}
		end(upheld ? ProtestView.State.UPHELD : ProtestView.State.DENIED, grounds, referee.name(), now);
	}

	private void end(ProtestView.State next, String grounds, String by, Instant now) {
		if (this.state == ProtestView.State.UNCONFIRMED) {
			throw new ConflictException("protest-unconfirmed", Sentence.of("protests.unconfirmed"));
		}
		if (this.state != ProtestView.State.FILED) {
			throw new ConflictException("protest-decided", Sentence.of("protests.decided", this.state.spoken()));
		}
		this.state = next;
		this.grounds = grounds;
		this.decidedBy = by;
		this.decidedAt = now;
	}

	/** Refuse an act that was decided on an older look at this protest. */
	void requireVersion(int seen) {
		ConflictException.requireSeen("protest", seen, this.version);
	}

	/**
	 * How it came to the house.
	 *
	 * @param by who took it
	 * @param filer the account of whoever filed it, empty where they have none
	 * @param handedIn when it was handed in, as they say
	 * @param now when it is written down
	 * @param posting the posted version that it is against, 0 before the first
	 */
	record Receipt(Actor by, String filer, Instant handedIn, Instant now, int posting) {
	}

	ProtestView view() {
		return new ProtestView(new ProtestView.ProtestId(this.id), new SegmentId(this.segment),
				new ProtestView.Claim(new EntryId(this.entry), this.category, this.text, this.posting),
				new ProtestView.Filing(this.filedBy, this.receivedBy, this.filedAt, this.writtenAt, this.confirmedBy),
				new ProtestView.Decision(this.state,
						(this.unheard != null) ? this.unheard : Sentence.said(this.grounds), this.decidedBy,
						this.decidedAt),
				(this.version != null) ? this.version : 0);
	}

}
