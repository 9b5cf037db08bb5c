package rimebook.rulings;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/** A question to the referee: written once. */
@Entity
@Immutable
@Table(name = "ruling_question")
class Question extends AppendedRow {

	@Column(name = "competition_id")
	private UUID competition;

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private @Nullable UUID segment;

	@Enumerated(EnumType.STRING)
	private QuestionView.RulingTopic topic;

	private String text;

	private String askedBy;

	private String takenBy;

	private Instant askedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Question() {
	}

	/**
	 * Write a question down.
	 * @throws RuleViolationException naming the field that is missing or too long
	 */
	Question(UUID id, CompetitionId competition, Rulings.AskQuestion asked, Actor actor, Instant now) {
		super(id);
		this.competition = competition.value();
		this.entry = asked.entry().value();
		this.segment = (asked.segment() != null) ? asked.segment().value() : null;
		this.topic = asked.topic();
		this.text = Required.text("question", asked.text(), 2000);
		this.askedBy = Required.text("askedBy", asked.askedBy(), 120);
		this.takenBy = actor.name();
		this.askedAt = now;
	}

	QuestionView.QuestionId id() {
		return new QuestionView.QuestionId(getId());
	}

	CompetitionId competition() {
		return new CompetitionId(this.competition);
	}

	EntryId entry() {
		return new EntryId(this.entry);
	}

	@Nullable SegmentId segment() {
		return (this.segment != null) ? new SegmentId(this.segment) : null;
	}

	QuestionView.RulingTopic topic() {
		return this.topic;
	}

	String text() {
		return this.text;
	}

	String askedBy() {
		return this.askedBy;
	}

	String takenBy() {
		return this.takenBy;
	}

	Instant askedAt() {
		return this.askedAt;
	}

}
