package rimebook.protests;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.results.SegmentResultView;
import rimebook.results.SignatureCondition;
import rimebook.results.SignatureGuard;
import rimebook.results.Standings;

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

	private final ProtestClock limits;

	private final Standings standings;

	private final ProtestSettings settings;

	private final Competitions competitions;

	private final Clock clock;

	UndecidedGuard(ProtestRepository protests, CorrectionRepository corrections, ProtestClock limits,
			Standings standings, ProtestSettings settings, Competitions competitions, Clock clock) {
		this.protests = protests;
		this.corrections = corrections;
		this.limits = limits;
		this.standings = standings;
		this.settings = settings;
		this.competitions = competitions;
		this.clock = clock;
	}

	@Override
	public List<SignatureCondition> conditions(SegmentId segment) {
		String path = "/desk/protests/" + segment;
		return List.of(
				decided("corrections",
						this.corrections.existsBySegmentAndState(segment.value(), CorrectionState.PROPOSED),
						"correction", path),
				decided("protests", this.protests.existsBySegmentAndState(segment.value(), ProtestState.FILED),
						"protest", path),
				time(heardUntil(segment), segment, path));
	}

	private static SignatureCondition decided(String key, boolean waits, String what, String path) {
		return waits
				? SignatureCondition.missing(key,
						"A " + what + " is not decided yet; the result can be signed afterwards.", path)
				: SignatureCondition.met(key, "No " + what + " waits for a decision.", path);
	}

	private @Nullable Instant heardUntil(SegmentId segment) {
		Instant postedAt = this.standings.result(segment).map(SegmentResultView::postedAt).orElse(null);
		return (postedAt == null) ? null : this.limits.limit(ProtestCategory.CONDUCT).map(postedAt::plus).orElse(null);
	}

	/**
	 * By default two people may sign while protests are heard; a protest then stops them.
	 */
	private SignatureCondition time(@Nullable Instant until, SegmentId segment, String path) {
		if (until == null) {
			return running("The time for protests starts with the posting.", path);
		}
		ZoneId zone = this.competitions.competition(this.competitions.eventOf(segment).competition()).zone();
		String end = DateTimeFormatter.ofPattern("d MMM HH:mm zzz", Locale.ENGLISH).format(until.atZone(zone));
		return this.clock.instant().isAfter(until)
				? SignatureCondition.met(TIME, "Protests were heard until " + end + ".", path)
				: running("Protests are heard until " + end + ".", path);
	}

	private SignatureCondition running(String sentence, String path) {
		return this.settings.signatureWaits() ? SignatureCondition.missing(TIME, sentence, path)
				: SignatureCondition.due(TIME, sentence + " No signature waits for its end.", path);
	}

}
