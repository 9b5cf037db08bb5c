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

/** A state of a competition's plan: written once, followed by the next. */
@Entity
@Immutable
@Table(name = "timetable_plan")
class PlanRow extends AppendedRow {

	@Column(name = "competition_id")
	private UUID competition;

	private int number;

	private String act;

	private String body;

	private String madeBy;

	private Instant madeAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PlanRow() {
	}

	/**
	 * @param act what was done, the action of its line on the record
	 */
	PlanRow(UUID id, CompetitionId competition, int number, String act, String body, Actor actor, Instant now) {
		super(id);
		this.competition = competition.value();
		this.number = number;
		this.act = act;
		this.body = body;
		this.madeBy = actor.name();
		this.madeAt = now;
	}

	String body() {
		return this.body;
	}

	int number() {
		return this.number;
	}

	PlanView.Act act() {
		return new PlanView.Act(this.act, this.madeBy, this.madeAt);
	}

}
