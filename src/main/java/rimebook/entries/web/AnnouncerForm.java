package rimebook.entries.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.entries.ForTheAnnouncer;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** What is told of a team in one segment, as typed. */
record AnnouncerForm(@Nullable String skaters, @Nullable String music, @Nullable Integer version) {

	static AnnouncerForm of(ForTheAnnouncer.Announced known) {
		return new AnnouncerForm((known.skaters() != null) ? known.skaters().toString() : "", known.music(),
				known.version());
	}

	ForTheAnnouncer.WriteDown order(EntryId entry, SegmentId segment) {
		return new ForTheAnnouncer.WriteDown(entry, segment, number(), (this.music != null) ? this.music : "",
				(this.version != null) ? this.version : 0);
	}

	private @Nullable Integer number() {
		String typed = (this.skaters != null) ? this.skaters.strip() : "";
		if (typed.isEmpty()) {
			return null;
		}
		if (!typed.matches("\\d{1,3}")) {
			throw RuleViolationException.ofField("field-not-a-number", "skaters",
					Sentence.of("entries.announcer.no-number", typed.substring(0, Math.min(40, typed.length())),
							ForTheAnnouncer.WriteDown.MOST_SKATERS));
		}
		return Integer.valueOf(typed);
	}

}
