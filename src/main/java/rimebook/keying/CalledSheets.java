package rimebook.keying;

import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.RuleSets;
import rimebook.competition.SegmentPlace;
import rimebook.performances.PerformanceId;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsSubmission;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/** Gathers what was called, noted and given of a performance judged by points. */
@Component
class CalledSheets {

	private final RuleSets ruleSets;

	private final ElementCalls calls;

	private final ListAuthorisations authorisations;

	private final PointsSubmission cards;

	private final DeductionNotes deductions;

	CalledSheets(RuleSets ruleSets, ElementCalls calls, ListAuthorisations authorisations, PointsSubmission cards,
			DeductionNotes deductions) {
		this.ruleSets = ruleSets;
		this.calls = calls;
		this.authorisations = authorisations;
		this.cards = cards;
		this.deductions = deductions;
	}

	/** What there is of a performance; of none, only by which rules it will be judged. */
	KeyingPage.CalledSheet of(SegmentPlace at, @Nullable PerformanceId performance) {
		PointsRules rules = this.ruleSets.of(at.event());
		List<SegmentRules.ComponentRule> components = this.ruleSets.of(at.event(), at.segment()).components();
		if (performance == null) {
			return new KeyingPage.CalledSheet(rules, components, null, null, Map.of(), null);
		}
		return new KeyingPage.CalledSheet(rules, components, this.calls.ofPerformance(performance).orElse(null),
				this.authorisations.ofPerformance(performance).orElse(null), this.cards.ofPerformance(performance),
				this.deductions.ofPerformance(performance).orElse(null));
	}

}
