package rimebook.results;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * What a correction would do to every place, before anybody approves it.
 *
 * @param segment each team's place in the segment now and then
 * @param event each team's place in the whole event now and then
 */
public record ResultEffect(List<Move> segment, List<Move> event) {

	/** One team's place before and after; {@code null} for none. */
	public record Move(String team, @Nullable Integer before, @Nullable Integer after) {

		/** Tell whether the correction would move this team. */
		public boolean isMoved() {
			return !java.util.Objects.equals(this.before, this.after);
		}

	}

	/** Tell whether any place would change. */
	public boolean changesPlaces() {
		return this.segment.stream().anyMatch(Move::isMoved) || this.event.stream().anyMatch(Move::isMoved);
	}

}
