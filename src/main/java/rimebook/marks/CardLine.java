package rimebook.marks;

import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.regex.Pattern;

import rimebook.tabulation.Hundredths;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.Points;

/**
 * One line of a paper card that has to be filled in.
 *
 * @param key what it is kept under
 * @param kind what may stand in it
 * @param number the element's place in the programme, else 0
 * @param name the element's code or the component's name; empty for a mark of placement
 * judging
 * @param most the greatest grade, else 0
 */
public record CardLine(String key, Kind kind, int number, String name, int most) {

	/** The first of two marks. */
	public static final CardLine FIRST = new CardLine("first", Kind.FIRST_MARK, 0, "", 0);

	/** The second of two marks. */
	public static final CardLine SECOND = new CardLine("second", Kind.SECOND_MARK, 0, "", 0);

	private static final String GRADE = "grade:";

	private static final String COMPONENT = "component:";

	private static final Pattern TENTHS = Pattern.compile("\\d|\\d[.,]\\d|\\d\\d");

	/** What a line may hold. */
	public enum Kind {

		/** 0.0 to 6.0 in tenths, the first of two. */
		FIRST_MARK,

		/** 0.0 to 6.0 in tenths, the second of two. */
		SECOND_MARK,

		/** A whole number from minus to plus the greatest grade. */
		GRADE,

		/** 0.25 to 10.00 in quarters. */
		COMPONENT

	}

	static CardLine of(CalledElement element, int most) {
		return new CardLine(keyOf(element.id()), Kind.GRADE, element.number(), element.code(), most);
	}

	static CardLine ofComponent(String name) {
		return new CardLine(keyOf(name), Kind.COMPONENT, 0, name, 0);
	}

	static String keyOf(UUID element) {
		return GRADE + element;
	}

	static String keyOf(String component) {
		return COMPONENT + component;
	}

	static void read(String key, Consumer<UUID> element, Consumer<String> component) {
		if (key.startsWith(GRADE)) {
			element.accept(UUID.fromString(key.substring(GRADE.length())));
		}
		else if (key.startsWith(COMPONENT)) {
			component.accept(key.substring(COMPONENT.length()));
		}
	}

	/** Write a value of this line as people do: "5.6", "+2", "7.25". */
	public String words(int value) {
		return switch (this.kind) {
			case FIRST_MARK, SECOND_MARK -> Hundredths.decimal(value);
			case GRADE -> PointsWords.grade(value);
			case COMPONENT -> PointsWords.of(value);
		};
	}

	/**
	 * Read what was typed: {@code "5.6"}, {@code "5,6"}, {@code "56"} or {@code "5"} for
	 * a mark in tenths, {@code "+2"} for a grade, {@code "7.25"} for a component.
	 * @return the value, empty for what cannot stand in this line
	 */
	public OptionalInt read(String typed) {
		OptionalInt value = switch (this.kind) {
			case FIRST_MARK, SECOND_MARK -> tenths(typed.strip());
			case GRADE -> PointsWords.readGrade(typed);
			case COMPONENT -> PointsWords.readHundredths(typed);
		};
		return value.isPresent() && fits(value.getAsInt()) ? value : OptionalInt.empty();
	}

	/** Two figures without a point are quick to key: 56 is 5.6. */
	private static OptionalInt tenths(String typed) {
		if (!TENTHS.matcher(typed).matches()) {
			return OptionalInt.empty();
		}
		String figures = typed.replaceAll("[.,]", "");
		return OptionalInt.of(Integer.parseInt(figures) * ((figures.length() == 1) ? 100 : 10));
	}

	private boolean fits(int value) {
		return switch (this.kind) {
			case FIRST_MARK, SECOND_MARK -> value <= 600;
			case GRADE -> Math.abs(value) <= this.most;
			case COMPONENT -> JudgedComponent.isMark(new Points(value));
		};
	}

}
