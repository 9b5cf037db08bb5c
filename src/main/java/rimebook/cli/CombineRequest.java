package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import rimebook.tabulation.Combination;
import rimebook.tabulation.CombinationRules;

/** The result of an event from a file of segment places. */
record CombineRequest(String file, CombinationRules rules, OutputFormat format) {

	static final String COMBINE = "--combine";

	static final String FACTORS = "--factors";

	static final String INCOMPLETE = "--incomplete";

	private static final Pattern FACTOR = Pattern.compile("\\d{1,3}(\\.\\d{1,2})?");

	static CombineRequest of(Arguments typed) {
		Arguments arguments = typed.within(Set.of(COMBINE, FACTORS, INCOMPLETE, OutputFormat.OPTION),
				" beside '--combine'");
		if (!arguments.rest().isEmpty()) {
			throw new UsageException("'" + arguments.rest().get(0) + "' is one file too many beside '--combine'");
		}
		return new CombineRequest(arguments.option(COMBINE).orElseThrow(), rules(arguments),
				OutputFormat.of(arguments));
	}

	static CombinationRules rules(Arguments arguments) {
		return CombinationRules.ofFactors(factors(arguments.option(FACTORS).orElse("0.5,1.0")))
			.withIncompleteOrder(arguments
				.choice(INCOMPLETE,
						Map.of("last", CombinationRules.IncompleteOrder.LAST_SEGMENT, "total",
								CombinationRules.IncompleteOrder.TOTAL_SO_FAR))
				.orElse(CombinationRules.IncompleteOrder.LAST_SEGMENT));
	}

	private static List<Integer> factors(String text) {
		List<Integer> factors = new ArrayList<>();
		for (String factor : text.split(",", -1)) {
			factors.add(factor(factor.strip()));
		}
		if (factors.size() > CombinationRules.MOST_SEGMENTS) {
			throw new UsageException("option '--factors' has " + factors.size() + " factors; expected at most "
					+ CombinationRules.MOST_SEGMENTS);
		}
		return factors;
	}

	private static int factor(String text) {
		int hundredths = FACTOR.matcher(text).matches() ? hundredths(text) : 0;
		if (hundredths == 0 || hundredths > 100_00) {
			throw new UsageException("option '--factors' has '" + text + "'; expected numbers from 0.01 to 100, "
					+ "with a point and commas between them, as in 0.5,1.0");
		}
		return hundredths;
	}

	private static int hundredths(String text) {
		int point = text.indexOf('.');
		String whole = (point < 0) ? text : text.substring(0, point);
		String decimals = (point < 0) ? "" : text.substring(point + 1);
		return Integer.parseInt(whole + (decimals + "00").substring(0, 2));
	}

	Tabulated run() {
		PlacesSheet sheet = PlacesSheet.of(CsvFile.read(this.file), this.rules.factors().size());
		return new Tabulated(this.format.write(StandingTables.of(Combination.combine(this.rules, sheet.entries()))),
				sheet.notes());
	}

}
