package rimebook.competition.web;

import java.util.Objects;
import java.util.OptionalInt;

import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

import rimebook.competition.DraftEvent;
import rimebook.competition.SegmentView;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.SegmentKind;

/**
 * What is typed about a segment. A segment without a name is not there.
 *
 * @param length minutes and seconds such as 2:40
 * @param tolerance seconds longer
 * @param shorter seconds shorter; empty where only the longest is limited, {@code null}
 * where nothing was asked: as many as longer
 * @param factor a decimal number such as 0.5
 */
record SegmentForm(@Nullable String name, @Nullable SegmentKind kind, @Nullable String length,
		@Nullable String tolerance, @Nullable String shorter, @Nullable String factor) {

	static SegmentForm none() {
		return new SegmentForm("", SegmentKind.FREE, "", "10", "10", "1.0");
	}

	/**
	 * What is filled in at first, with the lengths that senior teams skate (common
	 * practice; from memory). The form says so.
	 */
	static SegmentForm usual(SegmentKind kind) {
		return (kind == SegmentKind.SHORT) ? new SegmentForm("Short programme", kind, "2:50", "10", "10", "0.5")
				: new SegmentForm("Free skating", kind, "4:00", "10", "10", "1.0");
	}

	static SegmentForm of(SegmentView view) {
		return new SegmentForm(view.name(), view.kind(), Typed.length(view.facts().programmeSeconds()),
				String.valueOf(view.facts().toleranceSeconds()),
				(view.facts().shorterSeconds() != null) ? String.valueOf(view.facts().shorterSeconds()) : "",
				Hundredths.decimal(view.factor()));
	}

	boolean isThere() {
		return this.name != null && !this.name.isBlank();
	}

	/** Say beside each field what is wrong with it. */
	void check(Errors errors) {
		if (Objects.requireNonNull(this.name).strip().length() > 120) {
			fault("name", "long", errors);
		}
		if (this.kind == null) {
			fault("kind", "missing", errors);
		}
		if (isOutside(factorTyped(), 1, 999)) {
			fault("factor", "wrong", errors);
		}
		if (isOutside(lengthTyped(), 30, 600)) {
			fault("length", "wrong", errors);
		}
		if (isOutside(toleranceTyped(), 0, 120)) {
			fault("tolerance", "wrong", errors);
		}
		if (isShortestLimited() && isOutside(shorterTyped(), 0, 120)) {
			fault("shorter", "wrong", errors);
		}
	}

	private static boolean isOutside(OptionalInt typed, int least, int most) {
		return typed.isEmpty() || typed.getAsInt() < least || typed.getAsInt() > most;
	}

	/** The summary on top names the segment, since three of them have the same fields. */
	private void fault(String field, String what, Errors errors) {
		String start = Objects.requireNonNull(this.name).strip();
		errors.rejectValue(field, "competition.segment." + field + "." + what,
				new Object[] { start.substring(0, Math.min(40, start.length())) }, null);
	}

	DraftEvent.DraftSegment draft() {
		return new DraftEvent.DraftSegment(Objects.requireNonNull(this.name), Objects.requireNonNull(this.kind),
				factorTyped().orElseThrow(), lengthTyped().orElseThrow(), toleranceTyped().orElseThrow(),
				isShortestLimited() ? shorterTyped().orElseThrow() : null);
	}

	private boolean isShortestLimited() {
		return this.shorter == null || !this.shorter.isBlank();
	}

	private OptionalInt shorterTyped() {
		return (this.shorter != null) ? Typed.number(this.shorter) : toleranceTyped();
	}

	private OptionalInt factorTyped() {
		return Typed.hundredths(Objects.requireNonNullElse(this.factor, ""));
	}

	private OptionalInt lengthTyped() {
		return Typed.seconds(Objects.requireNonNullElse(this.length, ""));
	}

	private OptionalInt toleranceTyped() {
		return Typed.number(Objects.requireNonNullElse(this.tolerance, ""));
	}

}
