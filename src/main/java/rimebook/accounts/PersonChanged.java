package rimebook.accounts;

/**
 * Somebody's rights or password are others than before.
 *
 * @param signInName whose
 */
record PersonChanged(String signInName) {
}
