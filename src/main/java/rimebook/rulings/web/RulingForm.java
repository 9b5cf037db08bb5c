package rimebook.rulings.web;

import rimebook.pages.Given;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;
import rimebook.wording.Sentence;

/** The referee's ruling as typed. */
class RulingForm {

	private int seen;

	private String verdict = "";

	private String condition = "";

	private String grounds = "";

	private String rule = "";

	private boolean shown;

	private String reason = "";

	/** The form for a question: to supersede, filled with what holds now. */
	static RulingForm of(QuestionView question) {
		RulingForm form = new RulingForm();
		form.seen = question.rulings().size();
		RulingView current = question.current();
		if (current != null) {
			form.verdict = current.answer().verdict().name();
			form.condition = current.answer().condition();
			form.grounds = current.answer().grounds();
			form.rule = current.answer().rule();
			form.shown = current.answer().shown();
		}
		return form;
	}

	Rulings.GiveRuling ruling(QuestionView.QuestionId question) {
		RulingView.Verdict given = Given.read("verdict", this.verdict, RulingView.Verdict::valueOf,
				Sentence.of("rulings.verdict-missing"));
		return new Rulings.GiveRuling(question, this.seen,
				new RulingView.Answer(given, this.condition, this.grounds, this.rule, this.shown), this.reason);
	}

	public int getSeen() {
		return this.seen;
	}

	public void setSeen(int seen) {
		this.seen = seen;
	}

	public String getVerdict() {
		return this.verdict;
	}

	public void setVerdict(String verdict) {
		this.verdict = verdict;
	}

	public String getCondition() {
		return this.condition;
	}

	public void setCondition(String condition) {
		this.condition = condition;
	}

	public String getGrounds() {
		return this.grounds;
	}

	public void setGrounds(String grounds) {
		this.grounds = grounds;
	}

	public String getRule() {
		return this.rule;
	}

	public void setRule(String rule) {
		this.rule = rule;
	}

	public boolean isShown() {
		return this.shown;
	}

	public void setShown(boolean shown) {
		this.shown = shown;
	}

	public String getReason() {
		return this.reason;
	}

	public void setReason(String reason) {
		this.reason = reason;
	}

}
