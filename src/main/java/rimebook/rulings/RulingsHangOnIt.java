package rimebook.rulings;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.wording.Sentence;

/**
 * A segment about which the referee was asked stays: without it the ruling would be about
 * all segments, which nobody ruled.
 */
@Component
class RulingsHangOnIt implements CancellationGuard {

	private final QuestionRepository questions;

	private final Entries entries;

	RulingsHangOnIt(QuestionRepository questions, Entries entries) {
		this.questions = questions;
		this.entries = entries;
	}

	@Override
	public Optional<Sentence> againstRemoving(EventView event, List<SegmentView> segments) {
		return this.questions
			.findBySegmentInOrderByAskedAt(segments.stream().map((segment) -> segment.id().value()).toList())
			.stream()
			.findFirst()
			.flatMap((question) -> segments.stream()
				.filter((segment) -> segment.id().equals(question.segment()))
				.findFirst()
				.map((segment) -> sentence(question, segment)));
	}

	private Sentence sentence(Question question, SegmentView segment) {
		return Sentence.of("rulings.asked", this.entries.entry(question.entry()).team().name(), segment.name(),
				question.topic().spoken());
	}

}
