package rimebook.tabulation;

/**
 * A place in a text that was read, for example a table of values.
 *
 * @param line from 1
 * @param column number of the field in the line, from 1
 */
public record TextPosition(int line, int column) {

}
