package rimebook.stand.web;

/**
 * One thing that must be true before a segment can be opened.
 *
 * @param key the last part of its message keys: competition, panel, draw, earlier
 * @param done whether it is true
 * @param detail what is missing in particular, may be empty
 * @param path the page where it is put right
 */
record OpeningStep(String key, boolean done, String detail, String path) {
}
