package rimebook.paper;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

import org.jspecify.annotations.Nullable;

/**
 * What stands on a paper card, line by line, whichever way the event is judged, so that
 * two keyings of the same paper can be compared without knowing what they mean.
 *
 * @param lines by the key of their {@link CardLine}: a mark in hundredths, or a grade
 */
public record KeyedCard(Map<String, Integer> lines) {

	public KeyedCard {
		lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
	}

	/** What stands in a line, {@code null} where nothing does. */
	public @Nullable Integer value(CardLine line) {
		return this.lines.get(line.key());
	}

	/** Tell whether every line of this card stands with the same value on the other. */
	boolean agreesWith(KeyedCard other) {
		return other.lines.entrySet().containsAll(this.lines.entrySet());
	}

}
