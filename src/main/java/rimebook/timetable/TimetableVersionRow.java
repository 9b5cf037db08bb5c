package rimebook.timetable;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;
import rimebook.timetable.plan.Programmed;

/** A published timetable as stored: written once; the database refuses to change it. */
@Entity
@Immutable
@Table(name = "timetable_version")
class TimetableVersionRow extends AppendedRow {

	@Column(name = "competition_id")
	private UUID competition;

	private int number;

	private int planNumber;

	private String note;

	private String body;

	private String publishedBy;

	private Instant publishedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected TimetableVersionRow() {
	}

	TimetableVersionRow(UUID id, CompetitionId competition, Made made, Actor actor, Instant now) {
		super(id);
		this.competition = competition.value();
		this.number = made.number();
		this.planNumber = made.plan();
		this.note = made.note();
		this.body = made.body();
		this.publishedBy = actor.name();
		this.publishedAt = now;
	}

	String body() {
		return this.body;
	}

	int number() {
		return this.number;
	}

	TimetableVersion with(Programmed timetable) {
		return new TimetableVersion(new CompetitionId(this.competition), this.number, this.planNumber,
				new TimetableVersion.Act(this.note, this.publishedBy, this.publishedAt), timetable);
	}

	/**
	 * What is published.
	 *
	 * @param plan the number of the plan that it was made of
	 */
	record Made(int number, int plan, String note, String body) {
	}

}
