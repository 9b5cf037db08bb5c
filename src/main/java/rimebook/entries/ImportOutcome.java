package rimebook.entries;

/**
 * What an import has done.
 *
 * @param entered how many teams were entered
 * @param setAside how many rows were left out on purpose
 */
public record ImportOutcome(int entered, int setAside) {

}
