package rimebook.performances;

import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Transient;
import org.springframework.data.domain.Persistable;

/**
 * What was sent or noted about a performance: written once and never changed. Its
 * identity comes from outside, so nothing but being just made says that it is new.
 */
@MappedSuperclass
public abstract class PerformanceLine implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column(name = "performance_id")
	private UUID performance;

	@Transient
	private boolean fresh;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PerformanceLine() {
	}

	protected PerformanceLine(UUID id, PerformanceId performance) {
		this.id = id;
		this.performance = performance.value();
		this.fresh = true;
	}

	@Override
	public UUID getId() {
		return this.id;
	}

	@Override
	public boolean isNew() {
		return this.fresh;
	}

	/** The performance that the line is about. */
	public UUID performance() {
		return this.performance;
	}

}
