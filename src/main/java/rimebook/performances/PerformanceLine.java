package rimebook.performances;

import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.MappedSuperclass;

import rimebook.shared.AppendedRow;

/**
 * What was sent or noted about a performance: written once and never changed. Its
 * identity comes from outside, so nothing but being just made says that it is new.
 */
@MappedSuperclass
public abstract class PerformanceLine extends AppendedRow {

	@Column(name = "performance_id")
	private UUID performance;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PerformanceLine() {
	}

	protected PerformanceLine(UUID id, PerformanceId performance) {
		super(id);
		this.performance = performance.value();
	}

	/** The performance that the line is about. */
	public UUID performance() {
		return this.performance;
	}

}
