package rimebook.protests;

import java.util.function.Predicate;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.shared.Actor;

/** Counts the corrections that wait for a second official. */
@Service
@Transactional(readOnly = true)
public class ProposedCorrections {

	private final CorrectionRepository corrections;

	ProposedCorrections(CorrectionRepository corrections) {
		this.corrections = corrections;
	}

	/**
	 * Those of a segment that this person may decide, since somebody else proposed them.
	 */
	public int byOthers(SegmentId segment, Actor person) {
		return count(segment, (correction) -> !correction.isProposedBy(person));
	}

	/** Those of a segment that this person proposed, which only another one decides. */
	public int by(Actor person, SegmentId segment) {
		return count(segment, (correction) -> correction.isProposedBy(person));
	}

	private int count(SegmentId segment, Predicate<Correction> wanted) {
		return (int) this.corrections.findBySegmentOrderByProposedAt(segment.value())
			.stream()
			.filter(Correction::isProposed)
			.filter(wanted)
			.count();
	}

}
