package rimebook.entries;

import java.util.Set;

/**
 * What the person says about rows of an import file, by their lines.
 *
 * @param setAside rows that are left out
 * @param others rows whose club or team is none of those it is near to
 */
public record RowAnswers(Set<Integer> setAside, Set<Integer> others) {

	public static final RowAnswers NONE = new RowAnswers(Set.of(), Set.of());

	public RowAnswers {
		setAside = Set.copyOf(setAside);
		others = Set.copyOf(others);
	}

}
