package rimebook.standby;

/**
 * How far the record had come.
 *
 * @param line the number of its last line, 0 for none
 * @param digest the digest of that line
 */
record RecordHead(long line, String digest) {
}
