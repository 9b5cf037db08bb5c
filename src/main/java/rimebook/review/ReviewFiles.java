package rimebook.review;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.math3.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.shared.SpreadsheetCell;
import rimebook.tabulation.Hundredths;

/**
 * The same as CSV (RFC 4180, UTF-8), so that whoever doubts a figure can make it again:
 * one line a judge, segment and aspect, or one a mark.
 */
@Service
@Transactional(readOnly = true)
public class ReviewFiles {

	private static final List<String> JUDGES = List.of("segment", "version", "what", "judge", "name", "marks",
			"distance", "above", "pairs", "same", "reversed", "level", "kendall_tau_b", "spearman_rho", "outlying",
			"why_no_figure");

	private static final List<String> MARKS = List.of("segment", "version", "what", "start_number", "team", "item",
			"judge", "name", "given", "others", "others_average", "others_lowest", "others_highest", "difference",
			"outlying");

	private static final int DECIMALS = 4;

	private final Competitions competitions;

	private final MeasuredSegments segments;

	ReviewFiles(Competitions competitions, MeasuredSegments segments) {
		this.competitions = competitions;
		this.segments = segments;
	}

	/** One line a judge, segment and aspect. */
	public String judges(EventId event) {
		return table(JUDGES, event, this::judges);
	}

	/** One line a mark that could be compared. */
	public String marks(EventId event) {
		return table(MARKS, event, this::marks);
	}

	private String table(List<String> header, EventId event, Rows rows) {
		StringBuilder text = new StringBuilder();
		try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
			csv.printRecord(header);
			for (MeasuredSegment segment : this.segments.of(this.competitions.event(event))) {
				for (Map.Entry<Aspect, List<MarkLine>> lines : segment.lines().entrySet()) {
					for (int judge = 0; judge < segment.judges().size(); judge++) {
						for (List<String> row : rows.of(segment, lines.getKey(), judge)) {
							csv.printRecord(row.stream().map(SpreadsheetCell::of));
						}
					}
				}
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return text.toString();
	}

	private List<List<String>> judges(MeasuredSegment segment, Aspect aspect, int judge) {
		ReviewedJudge who = segment.judges().get(judge);
		Tally tally = segment.tally(aspect, judge);
		Pairs pairs = tally.pairs();
		List<String> row = new ArrayList<>(start(segment, aspect));
		row.addAll(List.of(number(who.number()), who.name(), number(tally.distance().marks()),
				(tally.distance().marks() > 0) ? mean(tally.distance().away(), tally.distance().marks()) : "",
				(tally.distance().marks() > 0) ? mean(tally.distance().above(), tally.distance().marks()) : "",
				number(pairs.all()), number(pairs.same()), number(pairs.reversed()), number(pairs.level()),
				figure(tally.kendall()), figure(tally.spearman()), number(tally.outlying()),
				(tally.lack() != null) ? tally.lack().spoken().english() : ""));
		return List.of(row);
	}

	private List<List<String>> marks(MeasuredSegment segment, Aspect aspect, int judge) {
		return segment.lines(aspect)
			.stream()
			.flatMap((line) -> line.of(judge).stream())
			.map((compared) -> mark(segment, aspect, segment.judges().get(judge), compared))
			.toList();
	}

	private static List<String> mark(MeasuredSegment segment, Aspect aspect, ReviewedJudge who, Compared compared) {
		MarkLine.Team team = compared.line().team();
		return Stream.concat(start(segment, aspect).stream(),
				Stream.of(number(team.startNumber()), team.name(), compared.line().item(), number(who.number()),
						who.name(), Hundredths.plain(compared.given()), number(compared.others()),
						mean(compared.average(), 1), Hundredths.plain(compared.lowest()),
						Hundredths.plain(compared.highest()), mean(compared.difference(), 1),
						compared.isOutlying(aspect.limit()) ? "yes" : "no"))
			.toList();
	}

	private static List<String> start(MeasuredSegment segment, Aspect aspect) {
		return List.of(segment.version().standing().segment(), number(segment.version().number()), aspect.word());
	}

	private static String number(int number) {
		return String.valueOf(number);
	}

	/** A sum of hundredths as a mean in whole units. */
	private static String mean(BigFraction sum, int count) {
		return Distance.rounded(sum.divide(count * Hundredths.ONE), DECIMALS).toPlainString();
	}

	private static String figure(@Nullable Double figure) {
		return (figure != null) ? BigDecimal.valueOf(figure).setScale(DECIMALS, RoundingMode.HALF_UP).toPlainString()
				: "";
	}

	/** The rows of one judge in one aspect of a segment. */
	private interface Rows {

		List<List<String>> of(MeasuredSegment segment, Aspect aspect, int judge);

	}

}
