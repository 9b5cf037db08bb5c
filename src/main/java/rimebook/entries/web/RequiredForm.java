package rimebook.entries.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.RequiredElements;
import rimebook.entries.RequiredSets;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** What a segment asks of planned elements, as typed; empty where nothing is asked. */
record RequiredForm(@Nullable String copiedFrom, @Nullable String lines, @Nullable String least, @Nullable String most,
		@Nullable Integer version) {

	static RequiredForm of(RequiredElements.RequiredView known) {
		return new RequiredForm(known.copiedFrom(), known.written(), text(known.list().least()),
				text(known.list().most()), known.version());
	}

	/** A ready list, for a segment of which that is known. */
	static RequiredForm of(RequiredSets.RequiredSet set, RequiredElements.RequiredView known) {
		return new RequiredForm(set.id(), set.lines(), text(set.least()), text(set.most()), known.version());
	}

	private static String text(@Nullable Integer figure) {
		return (figure != null) ? figure.toString() : "";
	}

	RequiredElements.SetRequired order(SegmentId segment) {
		return new RequiredElements.SetRequired(segment, (this.copiedFrom != null) ? this.copiedFrom : "",
				(this.lines != null) ? this.lines : "", number("least", this.least), number("most", this.most),
				(this.version != null) ? this.version : 0);
	}

	private static @Nullable Integer number(String field, @Nullable String typed) {
		String plain = (typed != null) ? typed.strip() : "";
		if (plain.isEmpty()) {
			return null;
		}
		if (!plain.matches("\\d{1,4}")) {
			throw RuleViolationException.ofField("field-not-a-number", field,
					Sentence.of("entries.required.no-number"));
		}
		return Integer.valueOf(plain);
	}

}
