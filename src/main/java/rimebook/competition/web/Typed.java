package rimebook.competition.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/** Numbers as people write them: a factor as 0.5, a length as 2:40. */
final class Typed {

	private static final Pattern DECIMAL = Pattern.compile("(\\d)(?:[.,](\\d)(\\d)?)?");

	private static final Pattern LENGTH = Pattern.compile("(\\d{1,2}):([0-5]\\d)");

	private Typed() {
	}

	/** Read hundredths: {@code "0.5" -> 50}, {@code "0,25" -> 25}; else empty. */
	static OptionalInt hundredths(String text) {
		Matcher match = DECIMAL.matcher(text.strip());
		if (!match.matches()) {
			return OptionalInt.empty();
		}
		return OptionalInt.of(100 * digit(match.group(1)) + 10 * digit(match.group(2)) + digit(match.group(3)));
	}

	/** Read seconds: {@code "2:40" -> 160}; else empty. */
	static OptionalInt seconds(String text) {
		Matcher match = LENGTH.matcher(text.strip());
		return match.matches()
				? OptionalInt.of(60 * Integer.parseInt(match.group(1)) + Integer.parseInt(match.group(2)))
				: OptionalInt.empty();
	}

	/** Read a whole number of up to four digits; else empty. */
	static OptionalInt number(String text) {
		return text.strip().matches("\\d{1,4}") ? OptionalInt.of(Integer.parseInt(text.strip())) : OptionalInt.empty();
	}

	/** Read a day: {@code "2027-02-13"}; else empty. */
	static Optional<LocalDate> day(@Nullable String text) {
		try {
			return Optional.of(LocalDate.parse((text != null) ? text.strip() : ""));
		}
		catch (DateTimeParseException ex) {
			return Optional.empty();
		}
	}

	/** Write seconds: {@code 160 -> "2:40"}. */
	static String length(int seconds) {
		return "%d:%02d".formatted(seconds / 60, seconds % 60);
	}

	private static int digit(@Nullable String text) {
		return (text != null) ? Integer.parseInt(text) : 0;
	}

}
