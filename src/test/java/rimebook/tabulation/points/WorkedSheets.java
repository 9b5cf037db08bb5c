package rimebook.tabulation.points;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** Worked examples, each with its source in the first line of its file. */
final class WorkedSheets {

	private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
		.setHeader()
		.setSkipHeaderRecord(true)
		.setCommentMarker('#')
		.get();

	private WorkedSheets() {
	}

	static List<CSVRecord> rows(String name) {
		InputStream resource = Objects
			.requireNonNull(WorkedSheets.class.getResourceAsStream("/tabulation/points/" + name), name);
		try (CSVParser parser = FORMAT.parse(new InputStreamReader(resource, StandardCharsets.UTF_8))) {
			return parser.getRecords();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	static Stream<CSVRecord> panels() {
		return rows("worked-panels.csv").stream();
	}

	/** The short programme of the worked example. */
	static Performance shortProgramme(String entry, DeductionRule.Deduction... deductions) {
		return Performance.skated(entry, rows("worked-elements.csv").stream().map(WorkedSheets::element).toList(),
				rows("worked-components.csv").stream().map(WorkedSheets::component).toList(), List.of(deductions));
	}

	private static JudgedElement element(CSVRecord row) {
		return JudgedElement.of(Integer.parseInt(row.get("number")), row.get("code"),
				judges(row).map(Integer::valueOf).toArray(Integer[]::new));
	}

	private static JudgedComponent component(CSVRecord row) {
		List<@Nullable Points> marks = new ArrayList<>(judges(row).map(Points::parse).toList());
		return new JudgedComponent(row.get("component"), marks);
	}

	private static Stream<String> judges(CSVRecord row) {
		return Stream.iterate(1, (judge) -> judge + 1).limit(7).map((judge) -> row.get("J" + judge));
	}

}
