package rimebook.entries;

import java.util.UUID;

import jakarta.persistence.Entity;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.shared.ConflictException;

/** What is told of a team in one segment by whoever announces it. */
@Entity
class AnnouncedProgramme extends EntryProgramme {

	private @Nullable Integer skaters;

	private String music = "";

	// For Hibernate.
	protected AnnouncedProgramme() {
	}

	AnnouncedProgramme(UUID id, EntryId entry, SegmentId segment) {
		super(id, entry, segment);
	}

	/** Put this in place of what was seen. */
	void write(ForTheAnnouncer.WriteDown order) {
		ConflictException.requireSeen("announcer-facts", order.version(), seen(ForTheAnnouncer.Announced.NONE));
		this.skaters = order.skaters();
		this.music = order.music();
	}

	/** As on the record; empty where nothing is known. */
	String inWords() {
		String many = (this.skaters != null) ? this.skaters + " on the ice" : "";
		String music = this.music.isEmpty() ? "" : "music: " + this.music;
		return many + ((many.isEmpty() || music.isEmpty()) ? "" : "; ") + music;
	}

	ForTheAnnouncer.Announced view() {
		return new ForTheAnnouncer.Announced(this.skaters, this.music, seen(ForTheAnnouncer.Announced.NONE));
	}

}
