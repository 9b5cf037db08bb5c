package rimebook.protests;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.performances.Amendments;
import rimebook.performances.PerformanceId;
import rimebook.shared.NotFoundException;

/** All corrections as they were proposed and decided. */
@Component
class CorrectionBook {

	private final CorrectionRepository corrections;

	private final Amendments amendments;

	private final StillOpen stillOpen;

	CorrectionBook(CorrectionRepository corrections, Amendments amendments, StillOpen stillOpen) {
		this.corrections = corrections;
		this.amendments = amendments;
		this.stillOpen = stillOpen;
	}

	/** Keep one that is proposed. */
	CorrectionView add(Correction correction) {
		this.corrections.save(correction);
		return view(correction);
	}

	CorrectionView view(Correction correction) {
		return correction.view(this.amendments);
	}

	CorrectionView find(CorrectionView.CorrectionId id) {
		return this.corrections.findById(id.value()).map(this::view).orElseThrow(() -> unknown(id));
	}

	/** Those of a segment, oldest first. */
	List<CorrectionView> ofSegment(SegmentId segment) {
		return this.corrections.findBySegmentOrderByProposedAt(segment.value()).stream().map(this::view).toList();
	}

	/** Take hold of what has to be held before the correction. */
	void holdBefore(CorrectionView.CorrectionId id) {
		this.corrections.findAmendmentById(id.value())
			.map(this.amendments::read)
			.ifPresent((pair) -> this.amendments
				.hold(new PerformanceId(this.corrections.findPerformanceById(id.value())), pair.after()));
	}

	/**
	 * Take hold of one whose competition has not ended.
	 * @param version that the person was looking at
	 */
	Correction hold(CorrectionView.CorrectionId id, int version) {
		Correction correction = this.corrections.findLockedById(id.value()).orElseThrow(() -> unknown(id));
		this.stillOpen.require(correction.segment());
		correction.requireVersion(version);
		return correction;
	}

	private static NotFoundException unknown(CorrectionView.CorrectionId id) {
		return NotFoundException.of("correction", id);
	}

}
