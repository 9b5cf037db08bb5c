package rimebook.marks;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Transient;
import org.hibernate.annotations.Immutable;
import org.springframework.data.domain.Persistable;

import rimebook.shared.Actor;

/** A remark of the referee to the panel: written once. */
@Entity
@Immutable
class Remark implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column(name = "performance_id")
	private UUID performance;

	@Enumerated(EnumType.STRING)
	private RemarkKind kind;

	private String text;

	private String notedBy;

	private Instant notedAt;

	@Transient
	private boolean fresh;

	@SuppressWarnings("NullAway.Init")
	protected Remark() {
	}

	Remark(UUID id, PerformanceId performance, RemarkKind kind, String text, Actor actor, Instant now) {
		this.id = id;
		this.performance = performance.value();
		this.kind = kind;
		this.text = text;
		this.notedBy = actor.name();
		this.notedAt = now;
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

	RemarkView view() {
		return new RemarkView(this.kind, this.text, this.notedBy, this.notedAt);
	}

}
