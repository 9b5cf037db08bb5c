package rimebook.competition.web;

/**
 * One place on the road of an event that the viewer may open.
 *
 * @param key the message key of its name
 */
record RoadStop(String key, String path) {
}
