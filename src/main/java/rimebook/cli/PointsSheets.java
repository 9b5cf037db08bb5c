package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import rimebook.tabulation.TabulationException;
import rimebook.tabulation.points.Performance;
import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.PointsTabulation;
import rimebook.tabulation.points.SegmentRules;
import rimebook.tabulation.points.ValueTable;

/** The files of a segment under points judging, which must fit together. */
record PointsSheets(ValueTable values, ElementsSheet elements, ComponentsSheet components,
		Optional<DeductionsSheet> deductions) {

	static PointsSheets read(PointsFiles files) {
		ValueTable values = ValuesFile.read(files.values());
		PointsSheets sheets = new PointsSheets(values, ElementsSheet.of(CsvFile.read(files.elements()), values),
				ComponentsSheet.of(CsvFile.read(files.components())),
				files.deductions().map((name) -> DeductionsSheet.of(CsvFile.readMaybeWithoutRows(name))));
		sheets.check();
		return sheets;
	}

	private void check() {
		int judges = this.elements.columns().judges().size();
		int others = this.components.columns().judges().size();
		if (others != judges) {
			throw this.components.file()
				.fault(this.components.file().headerLine(), this.components.columns().last().orElseThrow(), "there are "
						+ others + " judges; expected " + judges + " as in " + this.elements.file().name());
		}
		this.elements.entries().checkAllIn(this.components.entries(), "components");
		this.components.entries().checkAllIn(this.elements.entries(), "elements");
		this.deductions.ifPresent((sheet) -> sheet.entries().checkAllIn(this.elements.entries(), "elements"));
	}

	/**
	 * Make the standing.
	 * @throws TabulationException where the figures cannot be tabulated
	 */
	PointsStanding standing(SegmentRules.TieBreak tieBreak) {
		List<SegmentRules.ComponentRule> rules = this.components.rules();
		List<String> names = rules.stream().map(SegmentRules.ComponentRule::name).toList();
		return PointsTabulation.standing(SegmentRules.usual(this.values, rules, tieBreak),
				this.elements.entries().rows().keySet().stream().map((entry) -> performance(entry, names)).toList());
	}

	private Performance performance(String entry, List<String> components) {
		return Performance.skated(entry, this.elements.elements(entry), this.components.components(entry, components),
				this.deductions.map((sheet) -> sheet.deductions(entry)).orElse(List.of()));
	}

	List<String> notes() {
		List<String> notes = new ArrayList<>(this.elements.notes());
		Stream
			.concat(Stream.of(this.components.columns().header()),
					this.deductions.map(DeductionsSheet::columns).stream())
			.forEach((header) -> notes.addAll(header.notes()));
		return notes;
	}

}
