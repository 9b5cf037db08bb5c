package rimebook.results;

import java.util.Optional;
import java.util.function.Supplier;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentView;
import rimebook.published.Standing;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EventPair;
import rimebook.tabulation.EventStanding;
import rimebook.tabulation.PlacePair;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.TabulationException;
import rimebook.tabulation.points.PointsEventStanding;
import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.ScorePair;
import rimebook.tabulation.points.TotalPair;
import rimebook.wording.Sentence;

/**
 * Says why one of two teams of a published standing is ahead of the other, from the marks
 * that stand in it. Nothing is said where they would give other places today than were
 * published: a place is never explained by rules that did not make it.
 */
@Component
public class TwoTeams {

	private static final Log log = LogFactory.getLog(TwoTeams.class);

	private final RuleSets ruleSets;

	TwoTeams(RuleSets ruleSets) {
		this.ruleSets = ruleSets;
	}

	/**
	 * Say it of a segment.
	 * @param said a published standing of the segment
	 * @param one a row of it
	 * @param other another row of it
	 */
	public Optional<Sentence> inSegment(EventView event, SegmentView segment, Standing said, Standing.Row one,
			Standing.Row other) {
		return unplaced(one, other).or(() -> guarded(said.isByPoints() ? () -> scored(event, segment, said, one, other)
				: () -> placed(event, segment, said, one, other)));
	}

	/** Say it of an event, as {@link #inSegment}. */
	public Optional<Sentence> inEvent(EventView event, Standing said, Standing.Row one, Standing.Row other) {
		return unplaced(one, other).or(() -> guarded(
				said.isByPoints() ? () -> added(event, said, one, other) : () -> combined(event, said, one, other)));
	}

	/** Who has no place is behind nobody, and says so itself. */
	private static Optional<Sentence> unplaced(Standing.Row one, Standing.Row other) {
		if (one.place() != null && other.place() != null) {
			return Optional.empty();
		}
		Standing.Row placed = (one.place() != null) ? one : other;
		Integer place = placed.place();
		return Optional.of((place == null) ? Sentence.of("why.pair.neither", one.team(), other.team())
				: Sentence.of("why.pair.only", placed.team(), place, ((placed == one) ? other : one).team()));
	}

	private Optional<Sentence> placed(EventView event, SegmentView segment, Standing said, Standing.Row one,
			Standing.Row other) {
		SegmentStanding again = TabulatedAgain.placed(event.rules(segment.kind()), said);
		PlacePair pair = PlacePair.of(again, one.entry(), other.entry());
		return same(one, again.row(one.entry()).map((row) -> row.place()).orElse(null), other,
				again.row(other.entry()).map((row) -> row.place()).orElse(null))
						? Optional.of(pair.words((entry) -> team(entry, one, other))) : Optional.empty();
	}

	private Optional<Sentence> scored(EventView event, SegmentView segment, Standing said, Standing.Row one,
			Standing.Row other) {
		PointsStanding again = TabulatedAgain.scored(this.ruleSets.of(event), this.ruleSets.of(event, segment), said);
		ScorePair pair = ScorePair.of(again, one.entry(), other.entry());
		return same(one, again.row(one.entry()).map((row) -> row.place()).orElse(null), other,
				again.row(other.entry()).map((row) -> row.place()).orElse(null))
						? Optional.of(pair.words((entry) -> team(entry, one, other))) : Optional.empty();
	}

	private Optional<Sentence> combined(EventView event, Standing said, Standing.Row one, Standing.Row other) {
		CombinationRules rules = CombinationRules
			.ofFactors(said.segments().stream().map(Standing.SegmentColumn::factor).toList())
			.withDisqualifiedPlaces(event.judging().policies().disqualifiedPlaces());
		EventStanding again = TabulatedAgain.combined(rules, said);
		return words(EventPair.of(rules, again, one.entry(), other.entry()), one, other);
	}

	private Optional<Sentence> added(EventView event, Standing said, Standing.Row one, Standing.Row other) {
		PointsEventStanding again = TabulatedAgain.added(this.ruleSets.of(event), said);
		return words(TotalPair.of(again, one.entry(), other.entry()), one, other);
	}

	private static Optional<Sentence> words(EventPair pair, Standing.Row one, Standing.Row other) {
		EventPair.Side first = pair.ahead().entry().equals(one.entry()) ? pair.ahead() : pair.behind();
		EventPair.Side second = (first == pair.ahead()) ? pair.behind() : pair.ahead();
		return same(one, first.place(), other, second.place())
				? Optional.of(pair.words((entry) -> team(entry, one, other))) : Optional.empty();
	}

	private static boolean same(Standing.Row one, @Nullable Integer first, Standing.Row other,
			@Nullable Integer second) {
		return one.place() != null && one.place().equals(first) && other.place() != null
				&& other.place().equals(second);
	}

	private static String team(String entry, Standing.Row one, Standing.Row other) {
		return entry.equals(one.entry()) ? one.team() : other.team();
	}

	/** A page that cannot say it still shows the figures of both. */
	private static Optional<Sentence> guarded(Supplier<Optional<Sentence>> said) {
		try {
			return said.get();
		}
		catch (TabulationException ex) {
			log.warn("Two teams of a published standing cannot be compared by the rules of today", ex);
			return Optional.empty();
		}
	}

}
