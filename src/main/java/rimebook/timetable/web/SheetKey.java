package rimebook.timetable.web;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.function.Function;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.timetable.plan.Plan;
import rimebook.wording.Sentence;

/** How a form names one surface on one day: "2027-02-13.0". */
final class SheetKey {

	private SheetKey() {
	}

	static String of(Plan.Place place) {
		return place.day() + "." + place.surface();
	}

	static Plan.Place place(@Nullable String key) {
		return Given.read("sheet", key, SheetKey::read, Sentence.of("timetable.sheet-missing"));
	}

	private static Plan.Place read(String key) {
		int dot = key.lastIndexOf('.');
		return checked(key, (text) -> new Plan.Place(LocalDate.parse(text.substring(0, dot)),
				Integer.parseInt(text.substring(dot + 1))));
	}

	/** Whatever cannot be read is an argument that is wrong. */
	static <T> T checked(String text, Function<String, T> reader) {
		try {
			return reader.apply(text);
		}
		catch (IndexOutOfBoundsException | DateTimeException ex) {
			throw new IllegalArgumentException(text, ex);
		}
	}

}
