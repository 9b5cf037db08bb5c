package rimebook.performances;

import java.util.List;

/**
 * A remark of the referee as the panel has it.
 *
 * @param notYet the labels of the seats that have not said that they saw it
 * @param seats how many seats count
 */
public record RemarkToPanel(RemarkView remark, List<String> notYet, int seats) {

	public RemarkToPanel {
		notYet = List.copyOf(notYet);
	}

}
