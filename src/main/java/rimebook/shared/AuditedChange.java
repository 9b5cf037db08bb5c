package rimebook.shared;

import java.util.Objects;

/**
 * One line of the record. Publish it as it is when nobody but the record needs to hear of
 * the change; other events carry one.
 *
 * @param actor who did it
 * @param subject what kind of thing changed, one word ("entry", "card", "result")
 * @param subjectId the identity of that thing
 * @param action what was done, past tense after a dot ("card.closed")
 * @param before the state before in plain words, empty when there was none
 * @param after the state after in plain words, empty when there is none
 * @param reason why, as the person gave it, empty where none is asked for
 */
public record AuditedChange(Actor actor, String subject, String subjectId, String action, String before, String after,
		String reason) implements AuditedEvent {

	public AuditedChange {
		Objects.requireNonNull(actor, "actor");
		Objects.requireNonNull(subject, "subject");
		Objects.requireNonNull(subjectId, "subjectId");
		Objects.requireNonNull(action, "action");
		Objects.requireNonNull(before, "before");
		Objects.requireNonNull(after, "after");
		Objects.requireNonNull(reason, "reason");
	}

	/** Start a line: {@code of(actor, "entry", entryId, "entry.withdrawn")}. */
	public static AuditedChange of(Actor actor, String subject, Object subjectId, String action) {
		return new AuditedChange(actor, subject, subjectId.toString(), action, "", "", "");
	}

	/** The same line with what was there before and what is there now. */
	public AuditedChange from(String before, String after) {
		return new AuditedChange(this.actor, this.subject, this.subjectId, this.action, before, after, this.reason);
	}

	/** The same line with what is there now, where nothing was before. */
	public AuditedChange to(String after) {
		return from("", after);
	}

	/** The same line with the reason given. */
	public AuditedChange because(String reason) {
		return new AuditedChange(this.actor, this.subject, this.subjectId, this.action, this.before, this.after,
				reason);
	}

	@Override
	public AuditedChange change() {
		return this;
	}

}
