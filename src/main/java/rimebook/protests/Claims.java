package rimebook.protests;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.entries.Entries;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Looks up what a protest that is handed in is about: its team and its posting. */
@Component
class Claims {

	private final Entries entries;

	private final Competitions competitions;

	private final Standings standings;

	Claims(Entries entries, Competitions competitions, Standings standings) {
		this.entries = entries;
		this.competitions = competitions;
		this.standings = standings;
	}

	void requireTeamOfEvent(Protests.FileProtest filed) {
		if (!this.entries.entry(filed.claim().entry())
			.event()
			.equals(this.competitions.eventOf(filed.segment()).id())) {
			throw RuleViolationException.ofField("team-not-of-event", "entry",
					Sentence.of("protests.team-not-of-event"));
		}
	}

	/** The posting that a protest is against, {@code null} before the first. */
	SegmentResultView.@Nullable Posting posting(Protests.FileProtest filed) {
		List<SegmentResultView.Posting> all = this.standings.postings(filed.segment());
		if (filed.claim().posting() == 0) {
			return all.isEmpty() ? null : all.get(all.size() - 1);
		}
		return all.stream()
			.filter((posting) -> posting.number() == filed.claim().posting())
			.findFirst()
			.orElseThrow(() -> new RuleViolationException("posting-unknown", "posting",
					Sentence.of("protests.posting-unknown")));
	}

}
