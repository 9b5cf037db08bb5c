package rimebook.rosters;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** When what is known of the people of a competition is deleted, and what was. */
@Entity
@Table(name = "roster_retention")
class RetentionDate {

	@Id
	@Column(name = "competition_id")
	private UUID competition;

	@Version
	private @Nullable Integer version;

	private LocalDate deleteOn;

	private String setBy;

	private @Nullable Instant deletedAt;

	private int contacts;

	private int forgotten;

	private int erased;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected RetentionDate() {
	}

	/** One that {@link #set} has still to make good. */
	// Whoever makes one sets the day at once.
	@SuppressWarnings("NullAway.Init")
	RetentionDate(CompetitionId competition) {
		this.competition = competition.value();
	}

	void set(int seen, LocalDate deleteOn, String setBy) {
		ConflictException.requireSeen("retention", seen, this.version);
		if (this.deletedAt != null) {
			throw new ConflictException("retention-over", Sentence.of("rosters.retention-over"));
		}
		this.deleteOn = deleteOn;
		this.setBy = setBy;
	}

	/**
	 * Note what was deleted until now.
	 * @param done when it was all of it, {@code null} if there is more
	 */
	void deleted(Retention.Deleted what, @Nullable Instant done) {
		this.deletedAt = done;
		this.contacts = what.contacts();
		this.forgotten = what.forgotten();
		this.erased = what.erased();
	}

	CompetitionId competition() {
		return new CompetitionId(this.competition);
	}

	boolean isDone() {
		return this.deletedAt != null;
	}

	Retention.View view() {
		return new Retention.View(this.deleteOn, this.deletedAt,
				new Retention.Deleted(this.contacts, this.forgotten, this.erased),
				(this.version != null) ? this.version : Retention.View.NONE);
	}

}
