package rimebook.stand.web;

import java.util.List;

/**
 * What was keyed in from paper for the performance on the ice and waits.
 *
 * @param waiting one sentence for each card
 */
record PaperPart(List<String> waiting) implements LivePart {
}
