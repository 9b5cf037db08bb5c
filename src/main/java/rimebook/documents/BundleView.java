package rimebook.documents;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;

/**
 * How far everything of a competition on paper has come.
 *
 * @param order what was asked for
 * @param made how many documents are there
 * @param documents how many there will be; {@code null} until they are counted
 * @param heardAt the last sign of life of whoever makes it, UTC
 * @param trouble why it could not be made
 */
public record BundleView(UUID id, Order order, int made, @Nullable Integer documents, Instant heardAt,
		Trouble trouble) {

	private static final Duration SILENCE = Duration.ofMinutes(2);

	/** Tell whether it is whole. */
	public boolean isReady() {
		return this.documents != null && this.made == this.documents;
	}

	/** Tell whether nobody makes it any more, although it is not whole. */
	public boolean isStopped(Instant now) {
		return !isReady() && (this.trouble != Trouble.NONE || this.heardAt.plus(SILENCE).isBefore(now));
	}

	/** Why a bundle was not made to its end. */
	public enum Trouble {

		/** Nobody said: all is well, or whoever made it was stopped. */
		NONE,

		/** There is no room left where the database lies. */
		DISK_FULL,

		/** Something else, which is in the log. */
		FAILED;

		static Trouble of(String name) {
			return name.isEmpty() ? NONE : valueOf(name);
		}

		/** The key of the sentence that says it. */
		public String key() {
			return "documents.bundle.trouble." + name().toLowerCase(Locale.ROOT).replace('_', '-');
		}

	}

	/**
	 * What was asked for.
	 *
	 * @param by the name of who asked
	 * @param at when, UTC
	 */
	public record Order(CompetitionId competition, PaperSize paper, Locale language, String by, Instant at) {
	}

}
