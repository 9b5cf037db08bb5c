package rimebook.rulings;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A question to the referee on behalf of a team.
 *
 * @param entry whose question it is
 * @param segment the one segment it is about, {@code null} for all
 * @param text the question, up to 2000 characters
 * @param askedBy who asks, up to 120 characters, such as the team's manager
 */
public record AskQuestion(EntryId entry, @Nullable SegmentId segment, RulingTopic topic, String text, String askedBy) {
}
