package rimebook.competition;

/** A segment together with where it belongs. */
public record SegmentPlace(CompetitionView competition, EventView event, SegmentView segment) {

}
