package rimebook.points;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.performances.PerformanceId;

/**
 * What technical controllers said at the desk or on paper: which list they authorised,
 * and up to which version they have seen the deductions.
 */
@Component
class ControllersWord {

	private final ListAuthorisationRepository authorisations;

	private final DeductionsSeenRepository seen;

	ControllersWord(ListAuthorisationRepository authorisations, DeductionsSeenRepository seen) {
		this.authorisations = authorisations;
		this.seen = seen;
	}

	void keep(ListAuthorisation authorisation) {
		this.authorisations.save(authorisation);
	}

	void keep(DeductionsSeen deductions) {
		this.seen.save(deductions);
	}

	/** The controller's word for a version of the list, if it was given. */
	Optional<ListAuthorisations.Authorised> on(CalledList list) {
		return this.authorisations.findByPerformanceAndSequence(list.performance(), list.sequence())
			.map((word) -> word.view(deductionsSeen(new PerformanceId(list.performance())).orElse(Integer.MAX_VALUE)));
	}

	/**
	 * The newest version of the deductions that a controller has seen; empty where nobody
	 * was asked yet.
	 */
	Optional<Integer> deductionsSeen(PerformanceId performance) {
		return this.seen.findByPerformance(performance.value())
			.stream()
			.map(DeductionsSeen::sequence)
			.max(Integer::compare);
	}

}
