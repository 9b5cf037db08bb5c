package rimebook.audit;

/**
 * The end of the chain.
 *
 * @param lines how many lines there are
 * @param digest the digest of the last one, 64 zeros if there is none; printed on signed
 * documents
 */
public record RecordHead(long lines, String digest) {
}
