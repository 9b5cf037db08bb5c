package rimebook.tabulation;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** Published and constructed sheets, each with its source in the first line. */
record SheetFixtures(List<String> header, List<CSVRecord> rows) {

	private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
		.setHeader()
		.setSkipHeaderRecord(true)
		.setCommentMarker('#')
		.get();

	static SheetFixtures sheet(String name) {
		InputStream resource = Objects.requireNonNull(SheetFixtures.class.getResourceAsStream("/tabulation/" + name),
				name);
		return read(new InputStreamReader(resource, StandardCharsets.UTF_8));
	}

	static SheetFixtures sheet(Path file) {
		try {
			return read(Files.newBufferedReader(file));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static SheetFixtures read(Reader source) {
		try (CSVParser parser = FORMAT.parse(source)) {
			return new SheetFixtures(parser.getHeaderNames(), parser.getRecords());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Return the ordinals in the columns J1, J2, …. */
	List<EntryOrdinals> ordinals() {
		List<String> judges = this.header.stream().filter((name) -> name.matches("J\\d+")).toList();
		return this.rows.stream()
			.map((row) -> new EntryOrdinals(row.get("entry"),
					judges.stream().map((judge) -> Integer.valueOf(row.get(judge))).toList()))
			.toList();
	}

	/** Return the lines "place entry" in the order a standing has them. */
	List<String> places(String column) {
		record Line(int place, String entry) {

		}
		return this.rows.stream()
			.filter((row) -> !row.get(column).isEmpty())
			.map((row) -> new Line(Integer.parseInt(row.get(column)), row.get("entry")))
			.sorted((a, b) -> (a.place() != b.place()) ? Integer.compare(a.place(), b.place())
					: a.entry().compareTo(b.entry()))
			.map((line) -> line.place() + " " + line.entry())
			.toList();
	}

	/** Return the places in the columns "place1 x 0.5", …; empty means none. */
	List<EntryPlaces> segmentPlaces() {
		return this.rows.stream().map(this::segmentPlaces).toList();
	}

	private EntryPlaces segmentPlaces(CSVRecord row) {
		List<@Nullable Integer> places = new ArrayList<>();
		factorColumns()
			.forEach((column) -> places.add(row.get(column).isEmpty() ? null : Integer.valueOf(row.get(column))));
		return new EntryPlaces(row.get("entry"), EntryStatus.SKATED, places);
	}

	/** Return the factors named in those columns, in hundredths. */
	List<Integer> factors() {
		return factorColumns().stream()
			.map((column) -> Integer.parseInt(column.replaceAll(".* x (\\d+)\\.(\\d)$", "$1$20")))
			.toList();
	}

	private List<String> factorColumns() {
		return this.header.stream().filter((name) -> name.contains(" x ")).toList();
	}

	static List<String> places(SegmentStanding standing) {
		return standing.rows().stream().map((row) -> row.place() + " " + row.entry()).toList();
	}

	static List<String> places(EventStanding standing) {
		return standing.rows().stream().map((row) -> row.place() + " " + row.entry()).toList();
	}

}
