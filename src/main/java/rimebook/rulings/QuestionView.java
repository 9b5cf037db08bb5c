package rimebook.rulings;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A question with the rulings on it.
 *
 * @param segment the one it is about, {@code null} for all
 * @param segmentName empty for all
 * @param askedBy who asks on behalf of the team
 * @param takenBy the official who wrote the question down
 * @param askedAt when, UTC
 * @param rulings the newest first, which is the one that counts; none while it is open
 */
public record QuestionView(QuestionId id, CompetitionId competition, String event, EntryId entry, String team,
		String club, @Nullable SegmentId segment, String segmentName, RulingTopic topic, String text, String askedBy,
		String takenBy, Instant askedAt, List<RulingView> rulings) {

	public QuestionView {
		rulings = List.copyOf(rulings);
	}

	/** The ruling that counts, {@code null} while the question is open. */
	public @Nullable RulingView current() {
		return this.rulings.isEmpty() ? null : this.rulings.get(0);
	}

	/** Tell whether the referee has not ruled yet. */
	public boolean isOpen() {
		return this.rulings.isEmpty();
	}

	boolean isAbout(SegmentId segment) {
		return this.segment == null || this.segment.equals(segment);
	}

}
