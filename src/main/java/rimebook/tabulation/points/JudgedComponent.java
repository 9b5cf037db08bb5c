package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.TabulationException;

/**
 * A programme component with the marks of the panel.
 *
 * @param name as in the rules
 * @param marks of each judge in the panel's order, null where one gave none; 0.00 is not
 * a mark
 */
public record JudgedComponent(String name, List<@Nullable Points> marks) {

	private static final int LOWEST = 25;

	private static final int HIGHEST = 1000;

	private static final int STEP = 25;

	/**
	 * Check the marks.
	 * @throws TabulationException {@code component-missing}, {@code no-component-marks}
	 * or {@code component-mark-out-of-range}
	 */
	public JudgedComponent {
		marks = Collections.unmodifiableList(new ArrayList<>(marks));
		if (name.isBlank()) {
			throw Refusal.blankComponent();
		}
		if (marks.stream().allMatch((mark) -> mark == null)) {
			throw Refusal.noComponentMarks(name);
		}
		for (Points mark : marks) {
			if (mark != null && !isMark(mark)) {
				throw Refusal.componentMarkOutOfRange(name, mark);
			}
		}
	}

	/**
	 * Return a component.
	 * @param name as in the rules
	 * @param marks of each judge in hundredths, null where one gave none
	 * @return the component
	 */
	public static JudgedComponent of(String name, @Nullable Integer... marks) {
		List<@Nullable Points> points = new ArrayList<>();
		Arrays.asList(marks).forEach((mark) -> points.add((mark == null) ? null : new Points(mark)));
		return new JudgedComponent(name, points);
	}

	/**
	 * Return whether a judge may give a mark.
	 * @param mark the mark
	 * @return {@code true} for 0.25 to 10.00 in steps of 0.25
	 */
	public static boolean isMark(Points mark) {
		return mark.isBetween(LOWEST, HIGHEST) && mark.hundredths() % STEP == 0;
	}

}
