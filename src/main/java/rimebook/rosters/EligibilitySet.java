package rimebook.rosters;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Properties;

import org.jspecify.annotations.Nullable;

import rimebook.rosters.eligibility.EligibilityRules;

/**
 * A ready set of figures to copy from. It is no rulebook: each figure says where it was
 * read, and every one can be changed once it is copied.
 */
public final class EligibilitySet {

	/** In the order in which they are told. */
	static final List<String> FIGURES = List.of("least-on-ice", "when-fewer", "most-on-ice", "most-alternates",
			"roster-limit", "youngest", "oldest", "others-youngest", "others-oldest", "cut-off", "share",
			"alternates-count", "one-team", "other-skaters", "membership-number");

	private final String id;

	private final Properties written;

	EligibilitySet(String id, Properties written) {
		this.id = id;
		this.written = written;
	}

	/** The word by which it is chosen. */
	public String id() {
		return this.id;
	}

	/** What people call it. */
	public String title() {
		return this.written.getProperty("title");
	}

	/** What follows where fewer are on the ice than it asks for; empty for nothing. */
	public String whenFewer() {
		return this.written.getProperty("when-fewer", "");
	}

	/** Where each figure was read, in order; "from memory" where nowhere. */
	public List<Map.Entry<String, String>> sources() {
		return FIGURES.stream()
			.filter(this.written::containsKey)
			.map((figure) -> Map.entry(figure, this.written.getProperty(figure + ".source")))
			.toList();
	}

	/**
	 * The figures for a competition.
	 * @param firstDay its first day; ages are counted on the last cut-off day up to then
	 */
	public EligibilityRules rules(LocalDate firstDay) {
		Integer share = number("share");
		return new EligibilityRules(
				new EligibilityRules.Size(number("least-on-ice"), number("most-on-ice"), number("most-alternates"),
						number("roster-limit")),
				new EligibilityRules.Ages(new EligibilityRules.Window(number("youngest"), number("oldest")),
						new EligibilityRules.Window(number("others-youngest"), number("others-oldest")),
						cutOff(firstDay), (share != null) ? share : 100,
						!this.written.getProperty("alternates-count", "yes").equals("no")),
				new EligibilityRules.Sharing(this.written.containsKey("one-team"), number("other-skaters")),
				this.written.containsKey("membership-number"));
	}

	private @Nullable LocalDate cutOff(LocalDate firstDay) {
		String day = this.written.getProperty("cut-off");
		if (day == null) {
			return null;
		}
		LocalDate thisYear = MonthDay.parse("--" + day).atYear(firstDay.getYear());
		return thisYear.isAfter(firstDay) ? thisYear.minusYears(1) : thisYear;
	}

	private @Nullable Integer number(String figure) {
		String number = this.written.getProperty(figure);
		return (number != null) ? Integer.valueOf(number) : null;
	}

}
