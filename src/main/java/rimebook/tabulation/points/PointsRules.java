package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.TabulationException;

/**
 * A rule set of points judging for one season: everything that changes by communication,
 * congress or national rule. An event keeps the rule set it was opened with.
 *
 * @param id names this version, for example {@code synchronized-2025-26}
 * @param title for people
 * @param values what codes and grades are worth
 * @param trimFrom number of marks in a line from which one highest and one lowest are
 * left out
 * @param tieBreaks what parts equal totals, by kind of segment
 * @param flooredAtZero whether deductions stop at a total of 0.00
 * @param disqualifiedPlaces what becomes of the place of a disqualified team
 * @param components with their factors, by segment and level
 * @param deductions in the order of the table
 * @param elements what the signs in the codes stand for
 * @param settings the single settings as written, each with its source
 */
public record PointsRules(String id, String title, ValueTable values, int trimFrom,
		Map<SegmentKind, SegmentRules.TieBreak> tieBreaks, boolean flooredAtZero, DisqualifiedPlaces disqualifiedPlaces,
		List<SegmentComponent> components, List<DeductionRule> deductions, List<ElementName> elements,
		List<SourcedSetting> settings) {

	public PointsRules {
		tieBreaks = Map.copyOf(tieBreaks);
		components = List.copyOf(components);
		deductions = List.copyOf(deductions);
		elements = List.copyOf(elements);
		settings = List.copyOf(settings);
	}

	/**
	 * Read a rule set.
	 * @param texts its tables
	 * @return the rules
	 * @throws TabulationException with its position, for whatever is not in the form
	 * described with the tables
	 */
	public static PointsRules read(RuleTexts texts) {
		return new RuleReader(texts).rules();
	}

	/**
	 * Return the levels of skating for which a kind of segment has components.
	 * @param kind short or free
	 * @return in the order of the table
	 */
	public List<String> levels(SegmentKind kind) {
		return this.components.stream()
			.filter((component) -> component.segment() == kind)
			.map(SegmentComponent::level)
			.distinct()
			.toList();
	}

	/**
	 * Return the rules of one segment.
	 * @param kind short or free
	 * @param level for example "senior"
	 * @return everything its scores and places depend on
	 * @throws TabulationException {@code unknown-level}
	 */
	public SegmentRules segment(SegmentKind kind, String level) {
		List<SegmentRules.ComponentRule> rules = this.components.stream()
			.filter((component) -> component.segment() == kind && component.level().equals(level))
			.map(SegmentComponent::rule)
			.toList();
		if (rules.isEmpty()) {
			throw Refusal.unknownLevel(level, levels(kind));
		}
		return new SegmentRules(this.values, this.trimFrom, rules,
				this.tieBreaks.getOrDefault(kind, SegmentRules.TieBreak.NONE), this.flooredAtZero,
				this.disqualifiedPlaces);
	}

	/**
	 * Find a deduction.
	 * @param item its short name
	 * @return the rule, if the table has it
	 */
	public Optional<DeductionRule> deduction(String item) {
		return this.deductions.stream().filter((rule) -> rule.item().equals(item)).findFirst();
	}

	/**
	 * Name in words what a code stands for.
	 * @param code as called
	 * @return for example "move element, level 4, downgraded once"; the code itself where
	 * it cannot be taken apart or a sign has no name
	 */
	public String nameOf(String code) {
		try {
			return CodeWords.of(this.elements, ElementCode.parse(code)).orElse(code);
		}
		catch (TabulationException ex) {
			return code;
		}
	}

	/**
	 * Name in words an element, without what the technical panel may still find about it.
	 * @param sign the element's sign, as {@link ElementCode#elementOf} gives it
	 * @return for example "move element" of {@code ME}; the sign where it has no name
	 */
	public String elementNameOf(String sign) {
		return CodeWords.ofElement(this.elements, sign);
	}

	/**
	 * List what somebody has to look up before relying on it.
	 * @return one sentence for each item written down from memory, for the administrator
	 */
	public List<String> toBeChecked() {
		List<String> sentences = new ArrayList<>();
		this.settings.stream()
			.filter((setting) -> setting.source().needsChecking())
			.forEach((setting) -> sentences
				.add(setting.name() + " is " + setting.value() + "; " + setting.source().remark()));
		this.components.stream()
			.filter((component) -> component.rule().source().needsChecking())
			.forEach((component) -> sentences.add(words(component)));
		this.deductions.stream()
			.filter((rule) -> rule.source().needsChecking())
			.forEach((rule) -> sentences.add(rule.words()));
		return sentences;
	}

	private static String words(SegmentComponent component) {
		SegmentRules.ComponentRule rule = component.rule();
		return rule.name() + ", " + component.level() + " " + component.segment().name().toLowerCase(Locale.ROOT)
				+ ": factor " + rule.factorText() + "; " + rule.source().remark();
	}

	/**
	 * What a sign in a code stands for.
	 *
	 * @param sign for example {@code ME}
	 * @param feature whether it is an additional feature of an element
	 * @param name for example "move element"
	 * @param source where the name comes from
	 */
	public record ElementName(String sign, boolean feature, String name, RuleSource source) {

	}

	/**
	 * A single setting of a rule set as it was written down.
	 *
	 * @param name for example {@code trim-from}
	 * @param value as written
	 * @param source where it comes from
	 */
	public record SourcedSetting(String name, String value, RuleSource source) {

	}

	/**
	 * A component as it counts in one segment at one level of skating.
	 *
	 * @param segment short or free
	 * @param level for example "senior"
	 * @param rule name and factor
	 */
	public record SegmentComponent(SegmentKind segment, String level, SegmentRules.ComponentRule rule) {

	}

	/**
	 * The tables of a rule set as comma-separated text, each with a header; lines
	 * beginning with {@code #} are comments. Every row but those of the values ends with
	 * the columns {@code provenance} (published, recomputed, practice or from memory) and
	 * {@code note}.
	 *
	 * @param settings {@code setting,value}: {@code id}, {@code title},
	 * {@code trim-from}, {@code tie-break-short} and {@code tie-break-free} (elements,
	 * components or none), {@code floor-at-zero} (yes or no) and
	 * {@code disqualified-places} (close-all, close-final or leave-gaps)
	 * @param values see {@link ValueTable}
	 * @param components {@code segment,level,component,factor}: the segment is short or
	 * free
	 * @param deductions {@code item,name,basis,unit,from,points}: the basis is per item,
	 * per skater or steps; one row for each step. The first row of an item may have
	 * {@code most}, the highest count that is proposed for one deduction, and
	 * {@code seconds}, for how many one of the unit stands. Without the column, as in
	 * tables from before there was one, or without a number in it, nothing limits the
	 * count, and the unit is no span of time: nothing that a clock measured in seconds is
	 * then proposed as this item, whatever the words of the unit say
	 * @param elements {@code sign,kind,name}: the kind is element or feature
	 */
	public record RuleTexts(String settings, String values, String components, String deductions, String elements) {

	}

	/**
	 * Where an item of a rule set comes from.
	 *
	 * @param provenance how well it is known
	 * @param note title, number and year of the document, or what to look up; may be
	 * empty
	 */
	public record RuleSource(Provenance provenance, String note) {

		private static final Map<String, Provenance> WORDS = Arrays.stream(Provenance.values())
			.collect(Collectors.toMap(Provenance::words, Function.identity()));

		static RuleSource of(TextTable.Row row) {
			return new RuleSource(row.choice("provenance", WORDS), row.text("note"));
		}

		/**
		 * Return whether somebody has to look the item up before relying on it.
		 * @return {@code true} for what was written down from memory
		 */
		public boolean needsChecking() {
			return this.provenance == Provenance.FROM_MEMORY;
		}

		/**
		 * Write the remark that stands beside the item.
		 * @return for example "from memory: look it up in the Technical Rules"
		 */
		public String remark() {
			return this.provenance.words() + (this.note.isEmpty() ? "" : ": " + this.note);
		}

		/** How well an item of a rule set is known. */
		public enum Provenance {

			/** Stands in a published document, which the note names. */
			PUBLISHED("published"),

			/** Recomputed from published score sheets without exception. */
			RECOMPUTED("recomputed"),

			/** Common practice without a document. */
			PRACTICE("practice"),

			/** Written down from memory: look it up before relying on it. */
			FROM_MEMORY("from memory");

			private final String words;

			Provenance(String words) {
				this.words = words;
			}

			/**
			 * Return the word used in tables and messages.
			 * @return for example {@code from memory}
			 */
			public String words() {
				return this.words;
			}

		}

	}

}
