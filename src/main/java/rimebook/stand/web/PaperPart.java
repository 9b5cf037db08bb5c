package rimebook.stand.web;

import java.util.List;

import rimebook.wording.Sentence;

/**
 * What was keyed in from paper for the performance on the ice and waits.
 *
 * @param waiting one sentence for each card
 */
record PaperPart(List<Sentence> waiting) implements LivePart {
}
