package rimebook.marks;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.CardMarks;

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

	/** The lines of a card of two marks. */
	public static KeyedCard of(CardMarks marks) {
		Map<String, Integer> lines = new LinkedHashMap<>();
		lines.put(CardLine.FIRST.key(), marks.first());
		lines.put(CardLine.SECOND.key(), marks.second());
		return new KeyedCard(lines);
	}

	/** The lines of a card of points judging. */
	public static KeyedCard of(PointsMarks marks) {
		Map<String, Integer> lines = new LinkedHashMap<>();
		marks.grades().forEach((element, grade) -> lines.put(CardLine.keyOf(element), grade));
		marks.components().forEach((name, mark) -> lines.put(CardLine.keyOf(name), mark));
		return new KeyedCard(lines);
	}

	/** What stands in a line, {@code null} where nothing does. */
	public @Nullable Integer value(CardLine line) {
		return this.lines.get(line.key());
	}

	/** Tell whether every line of this card stands with the same value on the other. */
	boolean agreesWith(KeyedCard other) {
		return other.lines.entrySet().containsAll(this.lines.entrySet());
	}

	/** Read as a card of two marks; both have to be there. */
	CardMarks marks() {
		return new CardMarks(this.lines.get(CardLine.FIRST.key()), this.lines.get(CardLine.SECOND.key()));
	}

	/** Read as a card of points judging. */
	PointsMarks pointsMarks() {
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		Map<String, Integer> components = new LinkedHashMap<>();
		this.lines.forEach((key, value) -> CardLine.read(key, (element) -> grades.put(element, value),
				(component) -> components.put(component, value)));
		return new PointsMarks(grades, components);
	}

}
