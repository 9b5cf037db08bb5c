package rimebook.cli;

import java.util.List;

/**
 * What a request printed.
 *
 * @param text for standard output
 * @param notes for standard error, things left out or doubtful
 */
record Tabulated(String text, List<String> notes) {

}
