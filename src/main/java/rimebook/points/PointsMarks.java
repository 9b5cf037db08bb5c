package rimebook.points;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * What one judge gave one performance in points judging.
 *
 * @param grades by the identity of the element, -5 to +5
 * @param components by the name of the component, in hundredths: 725 is 7.25
 */
public record PointsMarks(Map<UUID, Integer> grades, Map<String, Integer> components) {

	public PointsMarks {
		grades = Collections.unmodifiableMap(new LinkedHashMap<>(grades));
		components = Collections.unmodifiableMap(new LinkedHashMap<>(components));
	}

	/** The grade of an element, {@code null} where there is none. */
	public @Nullable Integer grade(CalledElement element) {
		return this.grades.get(element.id());
	}

	/** The mark of a component in hundredths, {@code null} where there is none. */
	public @Nullable Integer component(String name) {
		return this.components.get(name);
	}

}
