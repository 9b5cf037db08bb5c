package rimebook.points;

import java.util.List;
import java.util.Optional;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.performances.LooseEnds;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.wording.Sentence;

/** Called elements that the technical controller has not authorised. */
@Component
@Order(2)
class ListLooseEnds implements LooseEnds {

	private final PerformanceRegister performances;

	private final ListAuthorisations authorisations;

	private final Competitions competitions;

	ListLooseEnds(PerformanceRegister performances, ListAuthorisations authorisations, Competitions competitions) {
		this.performances = performances;
		this.authorisations = authorisations;
		this.competitions = competitions;
	}

	@Override
	public Optional<LooseEnds.LooseEnd> of(SegmentId segment) {
		if (!this.competitions.eventOf(segment).hasTechnicalPanel()) {
			return Optional.empty();
		}
		List<Sentence> open = this.performances.ofSegment(segment)
			.stream()
			.filter(PerformanceView::isClosed)
			.filter((performance) -> this.authorisations.ofPerformance(performance.id()).isEmpty())
			.limit(1)
			.map((performance) -> Sentence.of("points.not-authorised", performance.startNumber()))
			.toList();
		return Optional.of(new LooseEnds.LooseEnd("lists", Sentence.of("points.all-authorised"), open));
	}

}
