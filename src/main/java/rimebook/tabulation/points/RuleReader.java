package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.SegmentKind;

/** Makes a rule set of its tables. */
final class RuleReader {

	private static final Map<String, SegmentKind> SEGMENTS = Map.of("short", SegmentKind.SHORT, "free",
			SegmentKind.FREE);

	private static final Map<String, SegmentRules.TieBreak> TIE_BREAKS = Map.of("elements",
			SegmentRules.TieBreak.ELEMENTS, "components", SegmentRules.TieBreak.COMPONENTS, "none",
			SegmentRules.TieBreak.NONE);

	private static final Map<String, DisqualifiedPlaces> DISQUALIFIED = Map.of("close-all",
			DisqualifiedPlaces.CLOSE_ALL_PLACES, "close-final", DisqualifiedPlaces.CLOSE_FINAL_PLACES, "leave-gaps",
			DisqualifiedPlaces.LEAVE_GAPS);

	private static final Map<String, DeductionRule.DeductionBasis> BASES = Map.of("per item",
			DeductionRule.DeductionBasis.PER_ITEM, "per skater", DeductionRule.DeductionBasis.PER_SKATER, "steps",
			DeductionRule.DeductionBasis.STEPS);

	private final PointsRules.RuleTexts texts;

	private final TextTable settings;

	RuleReader(PointsRules.RuleTexts texts) {
		this.texts = texts;
		this.settings = TextTable.parse("settings", texts.settings());
		this.settings.checkEachOnce("setting");
	}

	PointsRules rules() {
		return new PointsRules(setting("id").text("value"), setting("title").text("value"),
				ValueTable.parse(this.texts.values()), setting("trim-from").whole("value"),
				Map.of(SegmentKind.SHORT, choice("tie-break-short", TIE_BREAKS), SegmentKind.FREE,
						choice("tie-break-free", TIE_BREAKS)),
				choice("floor-at-zero", Map.of("yes", true, "no", false)), choice("disqualified-places", DISQUALIFIED),
				components(), deductions(), elements(), sourcedSettings());
	}

	private TextTable.Row setting(String name) {
		return this.settings.rows()
			.stream()
			.filter((row) -> row.text("setting").equals(name))
			.findFirst()
			.orElseThrow(() -> Refusal.missingSetting(name));
	}

	private <T> T choice(String setting, Map<String, T> choices) {
		return setting(setting).choice("value", choices);
	}

	private List<PointsRules.SourcedSetting> sourcedSettings() {
		return this.settings.rows()
			.stream()
			.map((row) -> new PointsRules.SourcedSetting(row.text("setting"), row.text("value"),
					PointsRules.RuleSource.of(row)))
			.toList();
	}

	private List<PointsRules.SegmentComponent> components() {
		return TextTable.parse("components", this.texts.components())
			.rows()
			.stream()
			.map((row) -> new PointsRules.SegmentComponent(row.choice("segment", SEGMENTS), row.text("level"),
					row.read("component",
							(name) -> new SegmentRules.ComponentRule(name, row.points("factor").hundredths(),
									PointsRules.RuleSource.of(row)))))
			.toList();
	}

	private List<PointsRules.ElementName> elements() {
		TextTable table = TextTable.parse("elements", this.texts.elements());
		table.checkEachOnce("sign");
		return table.rows()
			.stream()
			.map((row) -> new PointsRules.ElementName(row.text("sign"),
					row.choice("kind", Map.of("element", false, "feature", true)), row.text("name"),
					PointsRules.RuleSource.of(row)))
			.toList();
	}

	private List<DeductionRule> deductions() {
		Map<String, List<TextTable.Row>> items = new LinkedHashMap<>();
		for (TextTable.Row row : TextTable.parse("deductions", this.texts.deductions()).rows()) {
			items.computeIfAbsent(row.text("item"), (item) -> new ArrayList<>()).add(row);
		}
		return items.values().stream().map(RuleReader::deduction).toList();
	}

	private static DeductionRule deduction(List<TextTable.Row> steps) {
		TextTable.Row first = steps.get(0);
		return first.read("item",
				(item) -> new DeductionRule(item, first.text("name"), first.choice("basis", BASES), unit(first),
						steps.stream()
							.map((step) -> new DeductionRule.DeductionStep(step.whole("from"), step.points("points")))
							.toList(),
						most(first), PointsRules.RuleSource.of(first)));
	}

	private static DeductionRule.DeductionUnit unit(TextTable.Row first) {
		return isGiven("seconds", first)
				? first.read("seconds",
						(seconds) -> new DeductionRule.DeductionUnit(first.text("unit"),
								OptionalInt.of(first.whole("seconds"))))
				: DeductionRule.DeductionUnit.of(first.text("unit"));
	}

	private static int most(TextTable.Row first) {
		return !isGiven("most", first) ? DeductionRule.MOST
				: Math.max(1, Math.min(first.whole("most"), DeductionRule.MOST));
	}

	/** Tables from before there was such a column are read as if it were empty. */
	private static boolean isGiven(String column, TextTable.Row row) {
		return row.has(column) && !row.text(column).isEmpty();
	}

}
