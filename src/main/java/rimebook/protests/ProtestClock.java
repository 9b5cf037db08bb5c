package rimebook.protests;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.stereotype.Component;

import rimebook.results.ProtestTimes;
import rimebook.results.SegmentResultView;
import rimebook.wording.Sentence;

/**
 * Decides whether a protest is heard at all; see {@link ProtestView.ProtestCategory}. The
 * end of the time is fixed with each posting, so that a later change of the settings
 * moves nothing that was posted.
 */
@Component
@EnableConfigurationProperties(ProtestSettings.class)
class ProtestClock implements ProtestTimes {

	private final ProtestSettings settings;

	ProtestClock(ProtestSettings settings) {
		this.settings = settings;
	}

	@Override
	public Instant conductUntil(Instant postedAt) {
		return postedAt.plus(this.settings.conduct());
	}

	@Override
	public Instant calculationUntil(Instant postedAt) {
		return postedAt.plus(this.settings.calculation());
	}

	/**
	 * Return until when a protest of that category against a posting is heard, or empty
	 * if never.
	 */
	static Optional<Instant> until(ProtestView.ProtestCategory category, SegmentResultView.Posting posting) {
		return switch (category) {
			case CALCULATION -> Optional.of(posting.calculationUntil());
			case CONDUCT -> Optional.of(posting.conductUntil());
			case EVALUATION -> Optional.empty();
		};
	}

	/**
	 * Return why a protest is not heard, or empty if it is.
	 * @param posting what it was handed in against, {@code null} before the first posting
	 */
	static Optional<Sentence> refusal(ProtestView.ProtestCategory category, Instant handedIn,
			SegmentResultView.@Nullable Posting posting) {
		if (category == ProtestView.ProtestCategory.EVALUATION) {
			return Optional.of(Sentence.of("protests.unheard.evaluation"));
		}
		return isLate(category, handedIn, posting)
				? Optional.of(late(category, handedIn, Objects.requireNonNull(posting))) : Optional.empty();
	}

	/** Tell whether the moment lies behind the end of the time for that posting. */
	static boolean isLate(ProtestView.ProtestCategory category, Instant moment,
			SegmentResultView.@Nullable Posting posting) {
		return posting != null && until(category, posting).filter(moment::isAfter).isPresent();
	}

	private static Sentence late(ProtestView.ProtestCategory category, Instant handedIn,
			SegmentResultView.Posting posting) {
		return Sentence.of("protests.unheard.late", minutes(posting.postedAt(), handedIn),
				minutes(posting.postedAt(), until(category, posting).orElseThrow()));
	}

	private static int minutes(Instant from, Instant to) {
		return Math.toIntExact(Duration.between(from, to).toMinutes());
	}

}
