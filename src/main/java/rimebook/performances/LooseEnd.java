package rimebook.performances;

import java.util.List;

/**
 * Something that has to be settled before the result of a segment is signed.
 *
 * @param name what it is known by
 * @param settled the sentence that says that nothing waits
 * @param open what waits, one sentence each without its stop; empty for nothing
 */
public record LooseEnd(String name, String settled, List<String> open) {

	public LooseEnd {
		open = List.copyOf(open);
	}

}
