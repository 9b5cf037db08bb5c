package rimebook.timetable.web;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.timetable.PlanView;
import rimebook.timetable.SheetDraft;
import rimebook.timetable.plan.Sheet;
import rimebook.wording.Sentence;

/**
 * When a surface can be used on a day, as typed.
 *
 * @param resurfacings times with commas or blanks between them
 */
record IceForm(int seen, @Nullable String day, @Nullable String surface, @Nullable String begins,
		@Nullable String closes, @Nullable String resurfacings) {

	/** What is there under that key, else what the first sheet has. */
	static IceForm of(PlanView view, String key) {
		Optional<Sheet> known = view.plan()
			.sheets()
			.stream()
			.filter((sheet) -> SheetKey.of(sheet.place()).equals(key))
			.findFirst();
		return known
			.map((sheet) -> new IceForm(view.number(), sheet.place().day().toString(),
					view.plan().surface(sheet.place().surface()), sheet.begins().toString(), sheet.closes().toString(),
					sheet.resurfacings().stream().map(LocalTime::toString).collect(Collectors.joining(", "))))
			.orElseGet(() -> new IceForm(view.number(), "", "", "08:00", "21:00", ""));
	}

	SheetDraft draft() {
		LocalDate date = Given.read("day", this.day, (text) -> SheetKey.checked(text, LocalDate::parse),
				Sentence.of("timetable.day-missing"));
		return new SheetDraft(date, Given.text(this.surface), time("begins", this.begins), time("closes", this.closes),
				times());
	}

	private List<LocalTime> times() {
		return Arrays.stream(Given.text(this.resurfacings).split("[,;\\s]+"))
			.filter((text) -> !text.isEmpty())
			.map((text) -> time("resurfacings", text))
			.toList();
	}

	private static LocalTime time(String field, @Nullable String typed) {
		return Given.read(field, typed, (text) -> SheetKey.checked(text.strip(), LocalTime::parse),
				Sentence.of("timetable.time-wrong"));
	}

}
