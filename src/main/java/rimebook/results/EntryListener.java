package rimebook.results;

import java.util.function.Predicate;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.entries.EntryEvent;
import rimebook.entries.EntryId;
import rimebook.published.Standing;
import rimebook.tabulation.EntryStatus;
import rimebook.wording.Sentence;

/**
 * Publishes an event anew when a team leaves it or comes back between two segments, in
 * the transaction of that act: a team that has withdrawn never keeps a place. Where a
 * performance ended with it, the standing says so already.
 */
@Component
class EntryListener {

	private final StandingUpdate update;

	EntryListener(StandingUpdate update) {
		this.update = update;
	}

	@EventListener
	void on(EntryEvent.Withdrawn withdrawn) {
		this.update.publishEvent(withdrawn.event(),
				rows(withdrawn.entry(), (row) -> !row.has(EntryStatus.SKATED) && !row.waits()),
				new VersionWriter.Publication(ResultVersion.Cause.STATUS, Sentence.said(withdrawn.change().reason()),
						withdrawn.change().actor()));
	}

	@EventListener
	void on(EntryEvent.Reinstated back) {
		this.update.publishEvent(back.event(), rows(back.entry(), (row) -> !row.has(EntryStatus.WITHDRAWN)),
				new VersionWriter.Publication(ResultVersion.Cause.STATUS, Sentence.said(back.change().reason()),
						back.change().actor()));
	}

	private static Predicate<Standing> rows(EntryId entry, Predicate<Standing.Row> holds) {
		return (standing) -> standing.rows()
			.stream()
			.filter((row) -> row.entry().equals(entry.toString()))
			.allMatch(holds);
	}

}
