package rimebook.results;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import org.hibernate.annotations.Immutable;
import org.springframework.data.domain.Persistable;

/** A published version as stored: written once; the database refuses to change it. */
@Entity
@Immutable
@Table(name = "result_version")
class ResultVersionRow implements Persistable<UUID> {

	@Id
	private UUID id;

	@Enumerated(EnumType.STRING)
	private Scope scope;

	private UUID scopeId;

	private int number;

	@Enumerated(EnumType.STRING)
	private ResultState state;

	@Enumerated(EnumType.STRING)
	private Cause cause;

	private String note;

	private Instant publishedAt;

	private String fingerprint;

	private String body;

	@Transient
	private boolean fresh;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected ResultVersionRow() {
	}

	ResultVersionRow(UUID id, ResultVersion version, String body) {
		this.id = id;
		this.scope = version.scope();
		this.scopeId = version.scopeId();
		this.number = version.number();
		this.state = version.state();
		this.cause = version.cause();
		this.note = version.note();
		this.publishedAt = version.publishedAt();
		this.fingerprint = version.fingerprint();
		this.body = body;
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

	String body() {
		return this.body;
	}

	ResultVersion with(Standing standing) {
		return new ResultVersion(this.scope, this.scopeId, this.number, this.state, this.cause, this.note,
				this.publishedAt, this.fingerprint, standing);
	}

}
