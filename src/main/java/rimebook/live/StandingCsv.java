package rimebook.live;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.shared.SpreadsheetCell;
import rimebook.tabulation.Hundredths;

/**
 * Writes a segment's standing as CSV (RFC 4180, UTF-8): one line a team in place order,
 * both marks and the ordinal of each judge in columns of their own; in points judging
 * total, elements, components and deductions.
 */
final class StandingCsv {

	private static final CSVFormat FORMAT = CSVFormat.RFC4180;

	private StandingCsv() {
	}

	static String of(@Nullable ResultVersion version) {
		StringBuilder text = new StringBuilder();
		try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
			if (version != null && version.standing().isByPoints()) {
				printPoints(csv, version.standing());
				return text.toString();
			}
			csv.printRecord(header((version != null) ? version.standing().judgeNumbers() : List.of()));
			if (version != null) {
				for (Standing.Row row : version.standing().rows()) {
					csv.printRecord(line(row, version.standing().judges()).stream().map(SpreadsheetCell::of));
				}
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return text.toString();
	}

	private static void printPoints(CSVPrinter csv, Standing standing) throws IOException {
		csv.printRecord("place", "team", "club", "start_number", "status", "total", "elements", "components",
				"deductions", "why");
		for (Standing.Row row : standing.rows()) {
			Standing.Score score = row.score();
			List<String> line = start(row);
			line.addAll((score == null) ? List.of("", "", "", "") : List.of(points(score.total()),
					points(score.elements()), points(score.components()), points(score.deducted())));
			line.add(row.why().english());
			csv.printRecord(line.stream().map(SpreadsheetCell::of));
		}
	}

	private static String points(int hundredths) {
		return BigDecimal.valueOf(hundredths, 2).toPlainString();
	}

	private static List<String> header(List<Integer> judges) {
		List<String> header = new ArrayList<>(List.of("place", "team", "club", "start_number", "status"));
		for (int judge : judges) {
			header.addAll(List.of("J" + judge + " first", "J" + judge + " second", "J" + judge));
		}
		header.add("why");
		return header;
	}

	private static List<String> line(Standing.Row row, int judges) {
		List<String> line = start(row);
		for (int judge = 0; judge < judges; judge++) {
			line.addAll((judge < row.cards().size()) ? card(row.cards().get(judge)) : List.of("", "", ""));
		}
		line.add(row.why().english());
		return line;
	}

	private static List<String> start(Standing.Row row) {
		return new ArrayList<>(List.of((row.place() != null) ? row.place().toString() : "", row.team(), row.club(),
				String.valueOf(row.startNumber()), row.status()));
	}

	private static List<String> card(Standing.Card card) {
		return List.of(Hundredths.decimal(card.first()), Hundredths.decimal(card.second()), card.ordinal());
	}

}
