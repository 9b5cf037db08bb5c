package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;

/** A file with the places in each segment of an event. */
record PlacesSheet(CsvFile file, int entry, List<Integer> segments, List<String> notes) {

	private static final Pattern PLACE_COLUMN = Pattern.compile("place[1-9]\\d?");

	private static final Pattern PLACE = Pattern.compile("[1-9]\\d{0,3}");

	/** Read a file that has a column for each factor. */
	static PlacesSheet of(CsvFile file, int factors) {
		return of(file, factors, factors + " factors; expected one factor for each segment");
	}

	/** Read a file that has a column for each factor but the last. */
	static PlacesSheet ofEarlier(CsvFile file, int factors) {
		return of(file, factors - 1, factors + " factors; expected a column for each factor but the last");
	}

	private static PlacesSheet of(CsvFile file, int expected, String factors) {
		HeaderColumns columns = new HeaderColumns(file, PLACE_COLUMN, "entry,place1,place2,...");
		List<String> names = new ArrayList<>();
		while (columns.hasAll(List.of(name(names.size() + 1)))) {
			names.add(name(names.size() + 1));
		}
		columns.nothingBeside(names, List.of(name(names.size() + 1)));
		if (names.size() != expected) {
			throw file.fault(file.headerLine(), file.header().size() - 1,
					"there are " + names.size() + " columns of places and " + factors);
		}
		new EntryNames(file, columns.entry()).check();
		return new PlacesSheet(file, columns.entry(), columns.indexes(names), columns.notes());
	}

	private static String name(int segment) {
		return "place" + segment;
	}

	/**
	 * Refuse a file in which an entry of another one is missing.
	 * @param entries to be listed here, with or without places
	 * @param other the file that has them
	 */
	void checkAllListed(List<String> entries, String other) {
		Set<String> known = this.file.rows().stream().map((row) -> row.field(this.entry)).collect(Collectors.toSet());
		entries.stream().filter((one) -> !known.contains(one)).findFirst().ifPresent((missing) -> {
			throw this.file.fault(this.file.headerLine(), this.entry, "there is no row of entry '" + missing + "' of "
					+ other + "; expected one, with empty places where it has none");
		});
	}

	List<EntryPlaces> entries() {
		return this.file.rows()
			.stream()
			.map((row) -> new EntryPlaces(row.field(this.entry), EntryStatus.SKATED, places(row)))
			.toList();
	}

	private List<@Nullable Integer> places(CsvFile.Row row) {
		List<@Nullable Integer> places = new ArrayList<>();
		this.segments.forEach((column) -> places.add(place(row, column)));
		return places;
	}

	private @Nullable Integer place(CsvFile.Row row, int column) {
		String text = row.field(column);
		if (text.isEmpty()) {
			return null;
		}
		if (!PLACE.matcher(text).matches()) {
			throw this.file.fault(row.line(), column, "'" + text + "' in column '" + this.file.header().get(column)
					+ "' is not a place; expected a whole number from 1 to " + EntryPlaces.HIGHEST + ", or nothing");
		}
		return Integer.valueOf(text);
	}

}
