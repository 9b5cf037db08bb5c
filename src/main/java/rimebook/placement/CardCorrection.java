package rimebook.placement;

import java.util.Map;
import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.Amending;
import rimebook.performances.Amendment;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceEvent;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Acts;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.CardMarks;
import rimebook.wording.Sentence;

/** Puts a corrected version on top of a closed card of two marks. */
@Service
class CardCorrection implements Amending<MarksAmendment> {

	private final PerformanceRegister performances;

	private final CardSubmissionRepository submissions;

	private final PanelCards cards;

	private final Panels panels;

	private final Acts acts;

	CardCorrection(PerformanceRegister performances, CardSubmissionRepository submissions, PanelCards cards,
			Panels panels, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.submissions = submissions;
		this.cards = cards;
		this.panels = panels;
	}

	@Override
	public Map<String, Class<? extends MarksAmendment>> kinds() {
		return Map.of("marks", MarksAmendment.class);
	}

	@Override
	@Transactional(readOnly = true)
	public MarksAmendment check(Amendment.SupposedChange<MarksAmendment> change) {
		requirePlacement(change.performance());
		PerformanceView performance = this.performances.findClosed(change.performance());
		CardMarks now = newest(performance, change.judge()).marks();
		if (now.equals(change.amendment().marks())) {
			throw new RuleViolationException("nothing-to-correct", "first",
					Sentence.of("placement.nothing-to-correct", MarkWords.of(now)));
		}
		return new MarksAmendment(now);
	}

	@Override
	@Transactional
	public void apply(Amendment.SupposedChange<MarksAmendment> change, MarksAmendment expected, Approval approval) {
		requirePlacement(change.performance());
		PerformanceView performance = this.performances.holdClosed(change.performance());
		SeatId seat = change.judge();
		CardSubmission old = newest(performance, seat);
		ConflictException.requireSeen("card", expected.marks(), old.marks());
		CardMarks corrected = change.amendment().marks();
		this.cards.requireMarksTaken(this.cards.eventOf(performance.segment()), corrected);
		this.submissions.save(new CardSubmission(this.acts.nextId(), performance.id(), seat, old.sequence() + 1,
				corrected, new CardSubmission.Receipt(CardOrigin.CORRECTION, this.acts.now())));
		this.acts.publish(PerformanceEvent.CardCorrected.of(performance, "card.corrected",
				new PerformanceEvent.CardCorrected.Words(this.panels.seat(seat).spoken(), expected.spoken(),
						change.amendment().spoken()),
				approval));
	}

	private void requirePlacement(PerformanceId performance) {
		this.cards.requirePlacement(this.cards.eventOf(this.performances.find(performance).segment()));
	}

	private CardSubmission newest(PerformanceView performance, SeatId seat) {
		return Optional.ofNullable(this.cards.newestOf(performance.id()).get(seat))
			.orElseThrow(() -> NotFoundException.of("card", seat));
	}

}
