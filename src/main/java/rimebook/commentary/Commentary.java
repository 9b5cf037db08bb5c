package rimebook.commentary;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.TeamView;
import rimebook.live.PublicTelling;
import rimebook.live.ToldSegment;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;

/** What may be told of a segment by somebody who talks while teams skate. */
@Service
@Transactional(readOnly = true)
public class Commentary {

	private static final int NEXT = 3;

	private final PublicTelling telling;

	private final TeamCards cards;

	private final ElementsCalled calls;

	private final Entries entries;

	Commentary(PublicTelling telling, TeamCards cards, ElementsCalled calls, Entries entries) {
		this.telling = telling;
		this.cards = cards;
		this.calls = calls;
		this.entries = entries;
	}

	/**
	 * Put it together.
	 * @param withCalls whether the elements may be told while they are called
	 * @throws rimebook.shared.NotFoundException if the competition has no such segment
	 */
	public CommentaryView of(CompetitionView competition, SegmentId segment, boolean withCalls) {
		ToldSegment told = this.telling.of(competition, segment);
		ToldSegment.ToldStart onIce = told.ice().now();
		ResultVersion whole = told.event().previousSegments(segment).isEmpty() ? null : told.whole();
		return new CommentaryView(competition, told, (onIce != null) ? now(told, onIce, withCalls) : null,
				told.ice()
					.next()
					.stream()
					.limit(NEXT)
					.map((start) -> this.cards.of(told, start, ElementsCalled.CalledSoFar.NOTHING))
					.toList(),
				last(told).orElse(null), PublishedTable.of(told.version()), PublishedTable.of(whole),
				PublishedOutlook.of((told.version() != null) ? told.version().standing() : null,
						(onIce != null) ? onIce.entry() : null));
	}

	/**
	 * What may be told of every team of the starting order, to be read out or printed.
	 */
	public List<TeamCard> introductions(CompetitionView competition, SegmentId segment) {
		ToldSegment told = this.telling.of(competition, segment);
		return told.ice()
			.order()
			.stream()
			.map((start) -> this.cards.of(told, start, ElementsCalled.CalledSoFar.NOTHING))
			.toList();
	}

	private TeamCard now(ToldSegment told, ToldSegment.ToldStart onIce, boolean withCalls) {
		boolean isTold = withCalls && told.event().hasTechnicalPanel();
		return this.cards.of(told, onIce, isTold ? this.calls.of(told.segment().id(), EntryId.of(onIce.entry()))
				: ElementsCalled.CalledSoFar.NOTHING);
	}

	private Optional<CommentaryView.LastMarked> last(ToldSegment told) {
		String entry = told.news().last();
		return Optional.ofNullable((entry != null) ? PublishedTable.row(told.version(), entry) : null)
			.map((row) -> last(told, row, told.version()));
	}

	private CommentaryView.LastMarked last(ToldSegment told, Standing.Row row, @Nullable ResultVersion version) {
		TeamView team = this.entries.entry(EntryId.of(row.entry())).team();
		Standing standing = Objects.requireNonNull(version).standing();
		return new CommentaryView.LastMarked(row.entry(), row.team(),
				team.spokenAs().isBlank() ? row.team() : team.spokenAs(), row.place(), PublishedTable.status(row),
				GivenMarks.of(row, standing, told.segment().kind()), told.news().changed());
	}

}
