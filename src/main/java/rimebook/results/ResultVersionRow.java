package rimebook.results;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.shared.AppendedRow;
import rimebook.shared.SentenceJson;
import rimebook.wording.Sentence;

/** A published version as stored: written once; the database refuses to change it. */
@Entity
@Immutable
@Table(name = "result_version")
class ResultVersionRow extends AppendedRow {

	@Enumerated(EnumType.STRING)
	private ResultVersion.Scope scope;

	private UUID scopeId;

	private int number;

	@Enumerated(EnumType.STRING)
	private ResultVersion.ResultState state;

	@Enumerated(EnumType.STRING)
	private ResultVersion.Cause cause;

	private String note;

	/** What the note says, for other languages; {@code null} where it is words alone. */
	@Convert(converter = SentenceJson.class)
	private @Nullable Sentence said;

	private Instant publishedAt;

	private String fingerprint;

	private String body;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected ResultVersionRow() {
	}

	ResultVersionRow(UUID id, ResultVersion version, String body) {
		super(id);
		this.scope = version.scope();
		this.scopeId = version.scopeId();
		this.number = version.number();
		this.state = version.state();
		this.cause = version.cause();
		this.note = version.cause().lead() + version.note();
		this.said = version.said().isAsItStands() ? null : version.said();
		this.publishedAt = version.publishedAt();
		this.fingerprint = version.fingerprint();
		this.body = body;
	}

	/** What is stored is what the record says, which names the cause first. */
	private Sentence saidBesideCause() {
		if (this.said != null) {
			return this.said;
		}
		String lead = this.cause.lead();
		return Sentence.said(this.note.startsWith(lead) ? this.note.substring(lead.length()) : this.note);
	}

	String body() {
		return this.body;
	}

	ResultVersion with(Standing standing) {
		return new ResultVersion(new ResultVersion.Key(this.scope, this.scopeId, this.number), this.state,
				new ResultVersion.Reason(this.cause, saidBesideCause()), this.publishedAt, this.fingerprint, standing);
	}

}
