package rimebook.points;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import org.hibernate.annotations.Immutable;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;

/**
 * The technical controller's word for one version of the called elements: written once,
 * never changed. A later version has none until it is authorised itself.
 */
@Entity
@Immutable
class ListAuthorisation extends PerformanceLine {

	private int sequence;

	private String controller;

	private String confirmedBy;

	private boolean onPaper;

	private Instant receivedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected ListAuthorisation() {
	}

	ListAuthorisation(UUID id, PerformanceId performance, int sequence, Word word, Instant receivedAt) {
		super(id, performance);
		this.sequence = sequence;
		this.controller = word.controller();
		this.confirmedBy = word.confirmedBy();
		this.onPaper = word.onPaper();
		this.receivedAt = receivedAt;
	}

	int sequence() {
		return this.sequence;
	}

	ListAuthorisations.Authorised view(int deductionsSeen) {
		return new ListAuthorisations.Authorised(this.sequence, this.controller, this.confirmedBy, this.onPaper,
				this.receivedAt, deductionsSeen);
	}

	/**
	 * The controller's word for a list.
	 *
	 * @param confirmedBy who passed it on
	 * @param onPaper whether it was given on paper
	 */
	record Word(String controller, String confirmedBy, boolean onPaper) {
	}

}
