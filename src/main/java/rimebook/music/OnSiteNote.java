package rimebook.music;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** That a team brings its music to the rink, or no longer: written once. */
@Entity
@Immutable
@Table(name = "music_on_site")
class OnSiteNote extends AppendedRow {

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private UUID segment;

	private int number;

	private boolean onSite;

	private String notedBy;

	private Instant notedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected OnSiteNote() {
	}

	OnSiteNote(UUID id, EntryId entry, SegmentId segment, Noted noted, Actor actor, Instant now) {
		super(id);
		this.entry = entry.value();
		this.segment = segment.value();
		this.number = noted.number();
		this.onSite = noted.onSite();
		this.notedBy = actor.name();
		this.notedAt = now;
	}

	EntryId entry() {
		return new EntryId(this.entry);
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	int number() {
		return this.number;
	}

	boolean isOnSite() {
		return this.onSite;
	}

	/** {@code null} where it was taken back. */
	MusicView.@Nullable OnSite view() {
		return this.onSite ? new MusicView.OnSite(this.notedBy, this.notedAt) : null;
	}

	/** As on the record. */
	static String inWords(String segment, boolean onSite) {
		return segment + ": " + (onSite ? "on site" : "not on site");
	}

	/** What was noted as which. */
	record Noted(int number, boolean onSite) {
	}

}
