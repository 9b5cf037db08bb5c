package rimebook.protests;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.results.SegmentResultView;
import rimebook.results.SignatureChecklist;
import rimebook.results.SignatureGuard;
import rimebook.results.Standings;
import rimebook.wording.Moment;
import rimebook.wording.Sentence;

/**
 * Nothing is signed while a protest or a correction waits for its decision nor, where it
 * is set so, while protests are still heard.
 */
@Component
@Order(2)
class UndecidedGuard implements SignatureGuard {

	private static final String TIME = "protest-time";

	private final ProtestRepository protests;

	private final CorrectionRepository corrections;

	private final Standings standings;

	private final Competitions competitions;

	private final Clock clock;

	UndecidedGuard(ProtestRepository protests, CorrectionRepository corrections, Standings standings,
			Competitions competitions, Clock clock) {
		this.protests = protests;
		this.corrections = corrections;
		this.standings = standings;
		this.competitions = competitions;
		this.clock = clock;
	}

	@Override
	public List<SignatureChecklist.SignatureCondition> conditions(SegmentId segment) {
		String path = "/desk/protests/" + segment;
		return List.of(
				decided("corrections",
						this.corrections.existsBySegmentAndState(segment.value(), CorrectionView.State.PROPOSED),
						"correction", path),
				decided("protests", this.protests.existsBySegmentAndStateIn(segment.value(), ProtestView.State.open()),
						"protest", path),
				time(segment, path));
	}

	private static SignatureChecklist.SignatureCondition decided(String key, boolean waits, String what, String path) {
		return waits
				? SignatureChecklist.SignatureCondition.missing(key, Sentence.of("protests.undecided." + what), path)
				: SignatureChecklist.SignatureCondition.met(key, Sentence.of("protests.all-decided." + what), path);
	}

	/**
	 * Whether a signature waits is a setting of the event; where it does not, a protest
	 * still stops it.
	 */
	private SignatureChecklist.SignatureCondition time(SegmentId segment, String path) {
		EventView event = this.competitions.eventOf(segment);
		List<SegmentResultView.Posting> postings = this.standings.postings(segment);
		if (postings.isEmpty()) {
			return running(event, Sentence.of("protests.time.not-begun"), path);
		}
		Instant until = postings.get(postings.size() - 1).conductUntil();
		ZoneId zone = this.competitions.competition(event.competition()).zone();
		Sentence end = Moment.of(until.atZone(zone));
		return this.clock.instant().isAfter(until)
				? SignatureChecklist.SignatureCondition.met(TIME, Sentence.of("protests.time.over", end), path)
				: running(event, Sentence.of("protests.time.running", end), path);
	}

	private static SignatureChecklist.SignatureCondition running(EventView event, Sentence sentence, String path) {
		return event.judging().signatureWaits() ? SignatureChecklist.SignatureCondition.missing(TIME, sentence, path)
				: SignatureChecklist.SignatureCondition.due(TIME,
						Sentence.of("protests.time.no-signature-waits", sentence), path);
	}

}
