package rimebook.protests.web;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentPlace;
import rimebook.protests.CorrectionView;
import rimebook.protests.ProtestView;
import rimebook.results.SegmentResultView;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Hundredths;

/**
 * What the pages about one segment's protests and corrections show.
 *
 * @param result {@code null} before the segment was opened
 * @param postings every posting of the result with the ends of its time, oldest first
 */
record ProtestsPage(SegmentPlace at, @Nullable SegmentResultView result, List<ProtestLine> protests,
		List<CorrectionLine> corrections, List<SegmentResultView.Posting> postings) {

	/** A short print of everything shown; the same on every node and after a restart. */
	public String print() {
		return Integer.toHexString(toString().hashCode());
	}

	/** The posting that a protest is against, {@code null} before the first. */
	public SegmentResultView.@Nullable Posting posting(ProtestView protest) {
		return this.postings.stream()
			.filter((posting) -> posting.number() == protest.claim().posting())
			.findFirst()
			.orElse(null);
	}

	/** The postings, the newest first, for a list to choose from. */
	public List<SegmentResultView.Posting> newestFirst() {
		List<SegmentResultView.Posting> all = new ArrayList<>(this.postings);
		Collections.reverse(all);
		return all;
	}

	/** The moment as the rink's clock showed it. */
	public @Nullable ZonedDateTime atRink(@Nullable Instant moment) {
		return (moment != null) ? moment.atZone(this.at.competition().zone()) : null;
	}

	/** Both marks of a card as people write them. */
	public String marks(CardMarks marks) {
		return Hundredths.decimal(marks.first()) + " / " + Hundredths.decimal(marks.second());
	}

	/** The cards of one team in the order of the seats. */
	record ClosedLine(int number, String team, List<CardMarks> cards) {
	}

	/** What the technical panel sent for one team, in words. */
	record ClosedSheet(int number, String team, List<String> lines) {
	}

	/** A protest with the team's name. */
	record ProtestLine(ProtestView protest, String team) {
	}

	/** A correction with the names of team and seat. */
	record CorrectionLine(CorrectionView correction, String team, String seat) {

		/** What it is about, in one line. */
		public String title() {
			return Stream.of(this.team, this.seat, this.correction.change().amendment().place())
				.filter((part) -> !part.isEmpty())
				.collect(Collectors.joining(", "));
		}

	}

}
