package rimebook.protests;

import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionMoveGuard;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/**
 * A competition is not final while a protest or a correction waits for its decision. What
 * waits in a cancelled event or segment cannot be decided and holds nothing back.
 */
@Component
class UndecidedMoveGuard implements CompetitionMoveGuard {

	private final Competitions competitions;

	private final ProtestRepository protests;

	private final CorrectionRepository corrections;

	UndecidedMoveGuard(Competitions competitions, ProtestRepository protests, CorrectionRepository corrections) {
		this.competitions = competitions;
		this.protests = protests;
		this.corrections = corrections;
	}

	@Override
	@Transactional(readOnly = true)
	public Optional<Sentence> refusal(CompetitionView competition, CompetitionState next) {
		return (next != CompetitionState.FINAL) ? Optional.empty()
				: this.competitions.events(competition.id())
					.stream()
					.filter((event) -> !event.isCancelled())
					.flatMap((event) -> event.held().segments().stream().flatMap((one) -> undecided(event, one)))
					.findFirst();
	}

	private Stream<Sentence> undecided(EventView event, SegmentView segment) {
		if (this.protests.existsBySegmentAndStateIn(segment.id().value(), ProtestView.State.open())) {
			return Stream.of(Sentence.of("protests.protest-undecided", event.name(), segment.name()));
		}
		return this.corrections.existsBySegmentAndState(segment.id().value(), CorrectionView.State.PROPOSED)
				? Stream.of(Sentence.of("protests.correction-undecided", event.name(), segment.name()))
				: Stream.empty();
	}

}
