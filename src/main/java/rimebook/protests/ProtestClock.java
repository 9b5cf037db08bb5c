package rimebook.protests;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.stereotype.Component;

/** Decides whether a protest is heard at all; see {@link ProtestCategory}. */
@Component
@EnableConfigurationProperties(ProtestSettings.class)
class ProtestClock {

	private final ProtestSettings settings;

	ProtestClock(ProtestSettings settings) {
		this.settings = settings;
	}

	/** Return until when protests of a category are heard, or empty if never. */
	Optional<Duration> limit(ProtestCategory category) {
		return switch (category) {
			case CALCULATION -> Optional.of(this.settings.calculation());
			case CONDUCT -> Optional.of(this.settings.conduct());
			case EVALUATION -> Optional.empty();
		};
	}

	/**
	 * Return why a protest is not heard, or empty if it is.
	 * @param postedAt when the result was posted, {@code null} before that
	 */
	Optional<String> refusal(ProtestCategory category, Instant filedAt, @Nullable Instant postedAt) {
		Optional<Duration> limit = limit(category);
		if (limit.isEmpty()) {
			return Optional.of("A protest against how judges or officials evaluated a performance is not allowed "
					+ "(ISU General Regulations 2012, Rule 123 paragraph 4.A.i).");
		}
		if (postedAt != null && filedAt.isAfter(postedAt.plus(limit.get()))) {
			return Optional.of("Out of time: it was handed in " + Duration.between(postedAt, filedAt).toMinutes()
					+ " minutes after the result was posted; " + limit.get().toMinutes()
					+ " minutes are allowed (ISU General Regulations 2012, Rule 123 "
					+ "paragraph 3, as set for this service).");
		}
		return Optional.empty();
	}

}
