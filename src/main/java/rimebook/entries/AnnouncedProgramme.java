package rimebook.entries;

import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.shared.ConflictException;

/** What is told of a team in one segment by whoever announces it. */
@Entity
class AnnouncedProgramme {

	@Id
	private UUID id;

	@Version
	private Integer version;

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private UUID segment;

	private @Nullable Integer skaters;

	private String music = "";

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected AnnouncedProgramme() {
	}

	// Hibernate counts the versions.
	@SuppressWarnings("NullAway.Init")
	AnnouncedProgramme(UUID id, EntryId entry, SegmentId segment) {
		this.id = id;
		this.entry = entry.value();
		this.segment = segment.value();
	}

	/** Put this in place of what was seen. */
	void write(ForTheAnnouncer.WriteDown order) {
		ConflictException.requireSeen("announcer-facts", order.version(), seen());
		this.skaters = order.skaters();
		this.music = order.music();
	}

	private int seen() {
		return (this.version != null) ? this.version : ForTheAnnouncer.Announced.NONE;
	}

	/** As on the record; empty where nothing is known. */
	String inWords() {
		String many = (this.skaters != null) ? this.skaters + " on the ice" : "";
		String music = this.music.isEmpty() ? "" : "music: " + this.music;
		return many + ((many.isEmpty() || music.isEmpty()) ? "" : "; ") + music;
	}

	ForTheAnnouncer.Announced view() {
		return new ForTheAnnouncer.Announced(this.skaters, this.music, seen());
	}

}
