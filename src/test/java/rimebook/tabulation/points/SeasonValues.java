package rimebook.tabulation.points;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The printed values of one season for single and pair skating or for ice dance, and how
 * a code on a sheet finds its grades in them: a jump combination uses those of its most
 * valuable jump, a combination lift adds two rows, call marks change a jump's base value.
 */
final class SeasonValues {

	private static final Pattern JUMP = Pattern.compile("(\\d)(T|S|Lo|F|Lz|A|Tw[B1-4])([<e!]*)");

	private final Map<String, Row> rows = new LinkedHashMap<>();

	SeasonValues(Path folder, String season, boolean iceDance) {
		String name = (iceDance ? "ice-dancing" : "figure-skating") + "-goe-adj-" + season + ".csv";
		try (Reader reader = Files.newBufferedReader(folder.resolve(name));
				CSVParser parser = CSVFormat.DEFAULT.parse(reader)) {
			for (CSVRecord record : parser) {
				Row row = iceDance ? Row.ofIceDance(record) : Row.ofSingles(record);
				codes(record.get(1)).forEach((code) -> this.rows.put(code, row));
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** One printed row can stand for several codes. */
	private static List<String> codes(String printed) {
		Matcher both = Pattern.compile("(\\d?)(\\w+)/(\\w)(\\w*?)(Li|Th|Ds)(\\w?)")
			.matcher(printed.replace("F/BiDs", "Fi/BiDs"));
		if (printed.startsWith("(F)")) {
			return List.of(printed.substring(3), "F" + printed.substring(3));
		}
		if (printed.equals("ChSq")) {
			return List.of("ChSq", "ChSq1");
		}
		return both.matches()
				? List.of(both.group(1) + both.group(2) + both.group(5) + both.group(6),
						both.group(1) + both.group(3) + both.group(4) + both.group(5) + both.group(6))
				: List.of(printed);
	}

	/** Return a table in which the code on a sheet is one row. */
	ElementValue value(String code) {
		List<Called> parts = Stream.of(code.split("\\+"))
			.filter((part) -> !part.matches("COMBO|SEQ|REP|.*\\*"))
			.map(this::called)
			.filter(Objects::nonNull)
			.toList();
		if (parts.isEmpty()) {
			throw new IllegalStateException("no values for " + code);
		}
		boolean lifts = code.matches(".*Li.*\\+.*Li.*");
		List<Points> points = lifts ? sum(parts)
				: parts.stream().max(Comparator.comparing(Called::base)).orElseThrow().row().points();
		return new ElementValue(code, Points.ZERO, ElementValue.GradeRange.SEVEN_GRADES, points);
	}

	private static List<Points> sum(List<Called> parts) {
		List<Points> sums = new ArrayList<>();
		for (int i = 0; i < 7; i++) {
			int grade = i;
			sums.add(Points.sum(parts.stream().map((part) -> part.row().points().get(grade)).toList()));
		}
		return sums;
	}

	private Called called(String part) {
		Matcher jump = JUMP.matcher(part);
		if (jump.matches()) {
			return jump(jump.toMatchResult());
		}
		Row row = this.rows.get(part.replaceAll("[<>e!]+$", "").replaceAll("V$", ""));
		return (row == null) ? null : new Called(row, row.base());
	}

	private Called jump(MatchResult jump) {
		String marks = jump.group(3);
		if (marks.contains("<<")) {
			Row lower = this.rows.get((Integer.parseInt(jump.group(1)) - 1) + jump.group(2));
			return (lower == null) ? null : new Called(lower, lower.base());
		}
		Row row = Objects.requireNonNull(this.rows.get(jump.group(1) + jump.group(2)), jump.group());
		boolean both = marks.contains("<") && marks.contains("e");
		return new Called(row,
				both ? row.underBoth() : (marks.contains("<") || marks.contains("e")) ? row.underOne() : row.base());
	}

	/** A code with the base value that decides which jump is the most valuable. */
	private record Called(Row row, Points base) {

	}

	/** A printed row: grades -3 to +3, and the base values under call marks. */
	private record Row(Points base, Points underOne, Points underBoth, List<Points> points) {

		static Row ofSingles(CSVRecord record) {
			Points base = read(record.get(5));
			Points underOne = record.get(6).isEmpty() ? base : read(record.get(6));
			Points underBoth = record.get(7).isEmpty() ? underOne : read(record.get(7));
			return new Row(base, underOne, underBoth, points(record, 8));
		}

		static Row ofIceDance(CSVRecord record) {
			Points base = read(record.get(5));
			return new Row(base, base, base, points(record, 6));
		}

		/**
		 * In the copy of the ice dance table nine rows have lost a minus: grade -2 stands
		 * there as 1.0 between -1.5 and -0.5.
		 */
		private static List<Points> points(CSVRecord record, int minusOne) {
			Points minusTwo = read(record.get(minusOne + 1));
			return List.of(read(record.get(minusOne + 2)),
					(minusTwo.compareTo(Points.ZERO) > 0) ? Points.ZERO.minus(minusTwo) : minusTwo,
					read(record.get(minusOne)), Points.ZERO, read(record.get(4)), read(record.get(3)),
					read(record.get(2)));
		}

		private static Points read(String text) {
			return Points.parse(text.strip().replace(',', '.'));
		}

	}

}
