package rimebook.shared;

import java.util.UUID;

import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Transient;
import org.springframework.data.domain.Persistable;

/**
 * A row that is written once and never changed. Its identity comes from outside, so
 * nothing but being just made says that it is new.
 */
@MappedSuperclass
public abstract class AppendedRow implements Persistable<UUID> {

	@Id
	private UUID id;

	@Transient
	private boolean fresh;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected AppendedRow() {
	}

	protected AppendedRow(UUID id) {
		this.id = id;
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

}
