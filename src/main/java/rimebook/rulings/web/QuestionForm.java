package rimebook.rulings.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.pages.Given;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.wording.Sentence;

/** A question to the referee as typed. */
class QuestionForm {

	private String entry = "";

	private String segment = "";

	private String topic = "";

	private String question = "";

	private String askedBy = "";

	Rulings.AskQuestion asked() {
		EntryId team = Given.read("entry", this.entry, EntryId::of, Sentence.of("rulings.team-missing"));
		QuestionView.RulingTopic about = Given.read("topic", this.topic, QuestionView.RulingTopic::valueOf,
				Sentence.of("rulings.topic-missing"));
		return new Rulings.AskQuestion(team, segmentGiven(), about, this.question, this.askedBy);
	}

	private @Nullable SegmentId segmentGiven() {
		return this.segment.isBlank() ? null
				: Given.read("segment", this.segment, SegmentId::of, Sentence.of("rulings.segment-missing"));
	}

	public String getEntry() {
		return this.entry;
	}

	public void setEntry(String entry) {
		this.entry = entry;
	}

	public String getSegment() {
		return this.segment;
	}

	public void setSegment(String segment) {
		this.segment = segment;
	}

	public String getTopic() {
		return this.topic;
	}

	public void setTopic(String topic) {
		this.topic = topic;
	}

	public String getQuestion() {
		return this.question;
	}

	public void setQuestion(String question) {
		this.question = question;
	}

	public String getAskedBy() {
		return this.askedBy;
	}

	public void setAskedBy(String askedBy) {
		this.askedBy = askedBy;
	}

}
