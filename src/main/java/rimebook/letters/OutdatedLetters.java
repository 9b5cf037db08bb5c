package rimebook.letters;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.wording.Sentence;

/**
 * Letters that were right when they were written and are so no longer. What did not go
 * counts as not written.
 */
@Service
@Transactional(readOnly = true)
public class OutdatedLetters {

	private final LetterStore store;

	private final ObjectProvider<SinceLetters> sources;

	OutdatedLetters(LetterStore store, ObjectProvider<SinceLetters> sources) {
		this.store = store;
		this.sources = sources;
	}

	/** What letters of a competition tell otherwise than it is now. */
	public List<Sentence> of(CompetitionId competition) {
		return Arrays.stream(LetterKind.values()).flatMap((kind) -> of(competition, kind)).toList();
	}

	private Stream<Sentence> of(CompetitionId competition, LetterKind kind) {
		Map<EntryId, Instant> written = this.store.written(competition, kind);
		return written.isEmpty() ? Stream.empty()
				: this.sources.orderedStream().flatMap((source) -> source.since(kind, competition, written).stream());
	}

}
