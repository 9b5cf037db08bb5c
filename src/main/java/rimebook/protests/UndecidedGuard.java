package rimebook.protests;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.results.SignatureGuard;

/** Nothing is signed while a protest or a correction waits for its decision. */
@Component
class UndecidedGuard implements SignatureGuard {

	private final ProtestRepository protests;

	private final CorrectionRepository corrections;

	UndecidedGuard(ProtestRepository protests, CorrectionRepository corrections) {
		this.protests = protests;
		this.corrections = corrections;
	}

	@Override
	public Optional<String> refusal(SegmentId segment) {
		if (this.protests.existsBySegmentAndState(segment.value(), ProtestState.FILED)) {
			return Optional.of("A protest is not decided yet; the result can be signed afterwards.");
		}
		if (this.corrections.existsBySegmentAndState(segment.value(), CorrectionState.PROPOSED)) {
			return Optional.of("A correction is not decided yet; the result can be signed afterwards.");
		}
		return Optional.empty();
	}

}
