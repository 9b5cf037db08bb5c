package rimebook.performances;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Where performances are found, and taken hold of, by those who send, close or correct
 * something for one.
 */
@Component
public class PerformanceRegister {

	private final PerformanceRepository performances;

	private final StillOpen stillOpen;

	PerformanceRegister(PerformanceRepository performances, StillOpen stillOpen) {
		this.performances = performances;
		this.stillOpen = stillOpen;
	}

	/**
	 * Look at one without taking hold.
	 * @throws NotFoundException if there is none of that identity
	 */
	public PerformanceView find(PerformanceId id) {
		return this.performances.findById(id.value())
			.map(Performance::view)
			.orElseThrow(() -> NotFoundException.of("performance", id));
	}

	/**
	 * Take hold of one until the transaction ends.
	 * @throws NotFoundException if there is none of that identity
	 */
	public PerformanceView hold(PerformanceId id) {
		return this.performances.findLockedById(id.value())
			.map(Performance::view)
			.orElseThrow(() -> NotFoundException.of("performance", id));
	}

	/**
	 * As {@link #hold}, of which something may still change.
	 * @throws NotFoundException if there is none of that identity
	 * @throws ConflictException where nothing of its segment may change any more
	 */
	public PerformanceView holdOpen(PerformanceId id) {
		PerformanceView performance = hold(id);
		this.stillOpen.require(performance.segment());
		return performance;
	}

	/**
	 * Look at one whose cards are closed.
	 * @throws NotFoundException if there is none of that identity
	 * @throws ConflictException {@code card-not-closed} if its cards can still be changed
	 */
	public PerformanceView findClosed(PerformanceId id) {
		return closed(find(id));
	}

	/** As {@link #findClosed}, and take hold of it until the transaction ends. */
	public PerformanceView holdClosed(PerformanceId id) {
		return closed(hold(id));
	}

	/**
	 * Those of a segment that count, or will, by starting number; none before it opens.
	 */
	public List<PerformanceView> ofSegment(SegmentId segment) {
		return this.performances.findBySegmentOrderByStartNumber(segment.value())
			.stream()
			.map(Performance::view)
			.toList();
	}

	/** Those of a segment for which cards are taken now. */
	public List<PerformanceView> takingCards(SegmentId segment) {
		return ofSegment(segment).stream().filter(PerformanceView::takesCards).toList();
	}

	/** Those of a segment that were set aside. */
	public List<PerformanceId> setAside(SegmentId segment) {
		return this.performances.findIdsSetAside(segment.value()).stream().map(PerformanceId::new).toList();
	}

	/** Tell whether a segment was opened. */
	public boolean isOpened(SegmentId segment) {
		return this.performances.existsBySegment(segment.value());
	}

	/**
	 * Refuse what is sent for a performance that is neither on the ice nor opened again.
	 * @throws ConflictException {@code card-closed} or {@code performance-not-open}
	 */
	public static void requireOnIce(PerformanceView performance) {
		if (!performance.takesCards()) {
			throw PerformanceRefusals.notTakingCards(performance);
		}
	}

	/**
	 * Refuse what comes back for a performance that is over; one that waits may have been
	 * called before the service went back.
	 * @throws ConflictException {@code card-closed} or {@code performance-not-open}
	 */
	public static void requireNotOver(PerformanceView performance) {
		if (performance.status() != PerformanceStatus.WAITING) {
			requireOnIce(performance);
		}
	}

	private static PerformanceView closed(PerformanceView performance) {
		if (!performance.isClosed()) {
			throw new ConflictException("card-not-closed",
					Sentence.of("performances.card-not-closed", performance.startNumber()));
		}
		return performance;
	}

}
