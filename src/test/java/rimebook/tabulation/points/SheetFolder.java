package rimebook.tabulation.points;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** Reads a folder with performances, judged aspects and judges' scores. */
final class SheetFolder {

	private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

	private final List<CSVRecord> performances;

	private final Map<String, List<CSVRecord>> aspects;

	private final Map<String, List<CSVRecord>> scores;

	SheetFolder(Path folder) {
		this.performances = rows(folder.resolve("performances.csv"));
		this.aspects = rows(folder.resolve("judged-aspects.csv")).stream()
			.collect(Collectors.groupingBy((row) -> row.get("performance_id")));
		this.scores = rows(folder.resolve("judge-scores.csv")).stream()
			.collect(Collectors.groupingBy((row) -> row.get("aspect_id")));
	}

	private static List<CSVRecord> rows(Path file) {
		try (Reader reader = Files.newBufferedReader(file); CSVParser parser = FORMAT.parse(reader)) {
			return parser.getRecords();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	List<PublishedSheet> sheets() {
		return this.performances.stream().map(this::sheet).toList();
	}

	private PublishedSheet sheet(CSVRecord row) {
		String id = row.get("performance_id");
		return new PublishedSheet(row.get("competition") + ", " + row.get("program"), id,
				Integer.parseInt(row.get("rank")), points(row, "total_segment_score"),
				points(row, "total_element_score"), points(row, "total_component_score"),
				deducted(points(row, "total_deductions")),
				section(id, "elements").stream()
					.map(this::element)
					.sorted(Comparator.comparing(PublishedSheet.Element::number))
					.toList(),
				section(id, "components").stream().map(this::component).toList());
	}

	/** One set writes deductions with a minus, the other without. */
	private static Points deducted(Points points) {
		return (points.compareTo(Points.ZERO) < 0) ? Points.ZERO.minus(points) : points;
	}

	private static Points points(CSVRecord row, String column) {
		return PublishedSheet.points(row.get(column));
	}

	private List<CSVRecord> section(String performance, String section) {
		return this.aspects.get(performance).stream().filter((row) -> row.get("section").equals(section)).toList();
	}

	private PublishedSheet.Element element(CSVRecord row) {
		List<@Nullable Integer> grades = new ArrayList<>();
		marks(row).forEach((mark) -> grades.add((mark == null) ? null : mark.hundredths() / 100));
		return new PublishedSheet.Element((int) Double.parseDouble(row.get("aspect_num")), row.get("aspect_desc"),
				points(row, "base_value"), points(row, "goe"), points(row, "scores_of_panel"), grades);
	}

	/** A component mark of 0.0 stands for a judge who was absent. */
	private PublishedSheet.Component component(CSVRecord row) {
		List<@Nullable Points> marks = marks(row);
		marks.replaceAll((mark) -> Points.ZERO.equals(mark) ? null : mark);
		return new PublishedSheet.Component(row.get("aspect_desc"), points(row, "factor"),
				points(row, "scores_of_panel"), marks);
	}

	private List<@Nullable Points> marks(CSVRecord aspect) {
		List<@Nullable Points> marks = new ArrayList<>(Collections.nCopies(9, null));
		for (CSVRecord score : this.scores.getOrDefault(aspect.get("aspect_id"), List.of())) {
			marks.set(Integer.parseInt(score.get("judge").substring(1)) - 1, points(score, "score"));
		}
		return marks;
	}

}
