package rimebook.competition.web;

import java.util.List;

/**
 * A stretch of the road: before the day, or one segment.
 *
 * @param segment the segment's name, empty before the day
 */
record RoadStretch(String segment, List<RoadStop> stops) {
}
