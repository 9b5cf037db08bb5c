package rimebook.stand.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import rimebook.clock.ClockView;
import rimebook.points.NotedDeduction;
import rimebook.stand.DeductionRow;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.PointsRules;

/**
 * Turns what the clock found into deductions of a rule set, by the short names that its
 * table gives them. What the table does not have is not proposed, nor what is noted.
 */
record ClockDeductions(PointsRules rules, List<NotedDeduction> noted) {

	private static final String TIME = "time";

	private static final String LATE_START = "late-start";

	private static final String INTERRUPTION = "interruption";

	private static final String RESTART = "restart";

	/**
	 * Beyond these seconds the team went on within the allowance of three minutes. From
	 * memory, after single skating, so whatever rests on it says so on the page.
	 */
	private static final int LONGEST_BY_STEPS = 40;

	List<ClockProposal> of(List<ClockView.ClockFinding> findings) {
		List<NotedDeduction> left = new ArrayList<>(this.noted);
		List<ClockProposal> proposals = new ArrayList<>();
		for (ClockView.ClockFinding finding : findings) {
			proposal(finding).filter((proposal) -> !isNoted(proposal, left)).ifPresent(proposals::add);
		}
		return proposals;
	}

	/** One that is noted answers one finding. */
	private static boolean isNoted(ClockProposal proposal, List<NotedDeduction> left) {
		Optional<NotedDeduction> answer = left.stream()
			.filter((noted) -> noted.item().equals(proposal.item()))
			.findFirst();
		answer.ifPresent(left::remove);
		return answer.isPresent();
	}

	private Optional<ClockProposal> proposal(ClockView.ClockFinding finding) {
		return switch (finding.fault()) {
			case LATE_START -> rule(LATE_START).map((rule) -> proposal(finding, rule, 1));
			case TOO_LONG, TOO_SHORT -> rule(TIME).flatMap((rule) -> timed(finding, rule));
			case INTERRUPTION -> interruption(finding);
		};
	}

	/** Nothing where the table does not say for how many seconds a unit stands. */
	private static Optional<ClockProposal> timed(ClockView.ClockFinding finding, DeductionRule rule) {
		OptionalInt step = rule.unit().seconds();
		return step.isPresent() ? Optional.of(proposal(finding, rule, finding.steps(step.getAsInt())))
				: Optional.empty();
	}

	private Optional<ClockProposal> interruption(ClockView.ClockFinding finding) {
		Optional<DeductionRule> restart = rule(RESTART);
		if (finding.seconds() > LONGEST_BY_STEPS && restart.isPresent()) {
			return Optional.of(proposal(finding, restart.get(), 1).markedFromMemory());
		}
		return rule(INTERRUPTION).flatMap((rule) -> timed(finding, rule)).map(ClockProposal::markedFromMemory);
	}

	private Optional<DeductionRule> rule(String item) {
		return this.rules.deduction(item);
	}

	/** Never more than the table gives for one deduction. */
	private static ClockProposal proposal(ClockView.ClockFinding finding, DeductionRule rule, int found) {
		int count = Math.min(found, rule.most());
		return new ClockProposal(finding, DeductionRow.words(rule, count), rule.item(), count,
				rule.source().needsChecking());
	}

}
