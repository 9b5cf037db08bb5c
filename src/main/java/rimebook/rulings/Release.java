package rimebook.rulings;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** That a question may be spoken of while it is open, or no longer: written once. */
@Entity
@Immutable
@Table(name = "ruling_release")
class Release extends AppendedRow {

	@Column(name = "question_id")
	private UUID question;

	private int number;

	private boolean released;

	private String givenBy;

	private Instant givenAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Release() {
	}

	Release(UUID id, UUID question, int number, boolean released, Actor actor, Instant now) {
		super(id);
		this.question = question;
		this.number = number;
		this.released = released;
		this.givenBy = actor.name();
		this.givenAt = now;
	}

	UUID question() {
		return this.question;
	}

	int number() {
		return this.number;
	}

	boolean isReleased() {
		return this.released;
	}

	/** As on the record. */
	static String inWords(boolean released) {
		return released ? "may be spoken of while it is open" : "for the crew and the team only";
	}

}
