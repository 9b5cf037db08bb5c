package rimebook.rulings;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.Immutable;

import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** One ruling on a question: written once, superseded by the next. */
@Entity
@Immutable
class Ruling extends AppendedRow {

	@Column(name = "question_id")
	private UUID question;

	private int number;

	@Enumerated(EnumType.STRING)
	private RulingView.Verdict verdict;

	private String allowedIf;

	private String grounds;

	private String rule;

	private boolean shown;

	private String reason;

	private String givenBy;

	private Instant givenAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Ruling() {
	}

	/**
	 * Write a ruling.
	 * @throws RuleViolationException naming the field that is missing or out of place
	 */
	Ruling(UUID id, Rulings.GiveRuling given, Actor actor, Instant now) {
		super(id);
		this.question = given.question().value();
		this.number = given.seen() + 1;
		this.verdict = given.answer().verdict();
		this.allowedIf = condition(given);
		this.grounds = Required.text("grounds", given.answer().grounds(), 2000);
		this.rule = Required.optional("rule", given.answer().rule(), 200);
		this.shown = given.answer().shown();
		this.reason = (this.number > 1) ? Required.text("reason", given.reason(), 500) : "";
		this.givenBy = actor.name();
		this.givenAt = now;
	}

	private static String condition(Rulings.GiveRuling given) {
		if (given.answer().verdict() == RulingView.Verdict.CONDITIONAL) {
			return Required.text("condition", given.answer().condition(), 1000);
		}
		if (!given.answer().condition().isBlank()) {
			throw RuleViolationException.ofField("condition-without-use", "condition",
					Sentence.of("rulings.condition-without-use"));
		}
		return "";
	}

	UUID question() {
		return this.question;
	}

	/** Write as on the record. */
	String inWords() {
		return this.verdict.words() + (this.allowedIf.isEmpty() ? "" : ": " + this.allowedIf) + ". " + this.grounds
				+ (this.rule.isEmpty() ? "" : " (" + this.rule + ")");
	}

	RulingView view() {
		return new RulingView(this.number,
				new RulingView.Answer(this.verdict, this.allowedIf, this.grounds, this.rule, this.shown), this.reason,
				this.givenBy, this.givenAt);
	}

}
