package rimebook.results;

import java.util.List;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * What can still happen while teams are to skate, and what the newest team changed. Only
 * what is proved stands here: a bound is marked as one.
 *
 * @param chances the places each team can still get, those marked first in their order;
 * empty in points judging
 * @param needs one sentence for each place that the next teams may hope for: what it
 * takes
 * @param flips one explanation for each two earlier teams whose order the newest changed
 */
public record Outlook(List<Chance> chances, List<String> needs, List<String> flips) {

	/** Nothing to say. */
	public static final Outlook NONE = new Outlook(List.of(), List.of(), List.of());

	public Outlook {
		chances = List.copyOf(chances);
		needs = List.copyOf(needs);
		flips = List.copyOf(flips);
	}

	/** Tell whether there is nothing to say. */
	@JsonIgnore
	public boolean isEmpty() {
		return this.chances.isEmpty() && this.needs.isEmpty() && this.flips.isEmpty();
	}

	/**
	 * One team.
	 *
	 * @param entry the entry's identity
	 * @param marked whether it has skated and been marked
	 * @param segment the places it can still get in the segment
	 * @param event the places it can still get in the event; {@code null} where the event
	 * does not end with this segment or is this segment
	 */
	public record Chance(String entry, String team, boolean marked, Range segment,
			@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Range event) {
	}

	/**
	 * From the best place to the worst.
	 *
	 * @param exact whether both can really come about; otherwise the truth lies within
	 */
	public record Range(int best, int worst, boolean exact) {

		/** Tell whether one place only is left. */
		@JsonIgnore
		public boolean isCertain() {
			return this.best == this.worst;
		}

	}

}
