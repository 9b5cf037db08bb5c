package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.TabulationException;

import static org.assertj.core.api.Assertions.assertThat;

/** Nonsense ends in a result or in a refusal with a name, never in anything else. */
class AbsurdPointsTests {

	private static final int INPUTS = 20_000;

	private static final int[] NUMBERS = { Integer.MIN_VALUE, -100_001, -100, -6, -1, 0, 1, 2, 5, 6, 24, 25, 100, 101,
			1000, 1025, 100_000, 100_001, Integer.MAX_VALUE };

	private static final String[] FRAGMENTS = { "code", "base", "m1", "p1", "m5", ",", ",", ",", "\n", "\n", "\"",
			"1.00", "-0.5", "x", "#", " ", "\r\n", "\uFEFF", "😀", "\u0000", "=1+1", "9999999", "m2", "m3", "p2", "p3",
			"code,base,m3,m2,m1,p1,p2,p3\n", "X,1,-3,-2,-1,1,2,3\n" };

	private static final String SEVEN_GRADES = "code,base,m3,m2,m1,p1,p2,p3\nX,1,-3,-2,-1,1,2,3\n";

	private final Random random = new Random(42);

	private final TreeSet<String> refusals = new TreeSet<>();

	private int results;

	@Test
	void everySegmentEndsInAResultOrANamedRefusal() {
		for (int i = 0; i < INPUTS; i++) {
			attempt(() -> PointsTabulation.standing(rules(), list(3, this::performance))
				.rows()
				.stream()
				.flatMap((row) -> Stream.concat(Stream.of(row.why()),
						(row.score() == null) ? Stream.of() : row.score().working().stream()))
				.toList());
		}
		assertThat(this.results).isGreaterThan(INPUTS / 20);
		assertThat(this.refusals).contains("code-missing", "component-mark-out-of-range", "component-missing",
				"components-missing", "deduction-out-of-range", "duplicate-component", "duplicate-element",
				"duplicate-entry", "element-number-out-of-range", "entry-missing", "factor-out-of-range",
				"grade-out-of-range", "marks-without-performance", "no-component-marks", "no-grades", "no-marks",
				"trim-from-out-of-range", "uneven-panel", "unknown-code", "value-out-of-range");
	}

	@Test
	void everyEventEndsInAResultOrANamedRefusal() {
		for (int i = 0; i < INPUTS; i++) {
			attempt(() -> {
				PointsEventStanding standing = PointsCombination.combine(sane() ? 2 : number(),
						pick(DisqualifiedPlaces.values()), list(4, this::totals));
				attempt(() -> PointsNeeded.inEvent(standing, name()));
				return standing.rows().stream().map(PointsEventStanding.PointsEventRow::why).toList();
			});
		}
		assertThat(this.results).isGreaterThan(INPUTS / 10);
		assertThat(this.refusals).containsExactly("duplicate-entry", "entry-missing", "entry-unknown", "nothing-needed",
				"place-out-of-range", "segments-out-of-range", "total-out-of-range", "uneven-segments");
	}

	@Test
	void everyTextEndsInATableOrANamedRefusal() {
		for (int i = 0; i < INPUTS; i++) {
			attempt(() -> ValueTable.parse(String.join("", list(14, () -> pick(FRAGMENTS)))));
			attempt(() -> ValueTable.parse(tableText()));
			attempt(() -> ElementCode.parse(String.join("", list(4, () -> pick("ME", "4", "B", "+", "pi", "<", "é")))));
		}
		assertThat(this.results).isGreaterThan(INPUTS / 5);
		assertThat(this.refusals).contains("code-malformed", "column-missing", "duplicate-column", "not-points",
				"quote-not-closed", "table-empty", "uneven-row");
	}

	/** A table with seven grades in which now and then a field is none. */
	private String tableText() {
		StringBuilder text = new StringBuilder("code,base,m3,m2,m1,p1,p2,p3");
		for (int row = 0; row < 1 + this.random.nextInt(3); row++) {
			text.append('\n').append(sane() ? "X" + row : pick(FRAGMENTS));
			for (String field : List.of("4", "-1.2", "-0.8", "-0.40", "0.4", "0.8", "1.2")) {
				text.append(sane() ? "," : pick(FRAGMENTS)).append(sane() ? field : pick(FRAGMENTS));
			}
		}
		return text.toString();
	}

	/** The published tables with a few places spoilt. */
	@Test
	void everyRuleSetEndsInRulesOrANamedRefusal() {
		PointsRules.RuleTexts texts = PublishedRules.texts();
		for (int i = 0; i < INPUTS; i++) {
			int spoilt = this.random.nextInt(4);
			PointsRules.RuleTexts absurd = new PointsRules.RuleTexts(spoilt(texts.settings(), spoilt == 0),
					SEVEN_GRADES, spoilt(texts.components(), spoilt == 1), spoilt(texts.deductions(), spoilt == 2),
					spoilt(texts.elements(), spoilt == 3));
			attempt(() -> {
				PointsRules rules = PointsRules.read(absurd);
				return List.of(rules.toBeChecked(), rules.nameOf(code()), rules.segment(SegmentKind.SHORT, "senior"));
			});
			attempt(() -> Points.parse(String.join("", list(4, () -> pick("1", "-", "+", ".", "0", "999", "e", "٣")))));
		}
		assertThat(this.results).isGreaterThan(INPUTS / 10);
		assertThat(this.refusals).contains("column-missing", "deduction-steps", "duplicate-value", "not-a-choice",
				"not-points", "not-whole", "quote-not-closed", "setting-missing", "uneven-row");
	}

	private String spoilt(String text, boolean really) {
		StringBuilder spoilt = new StringBuilder(text);
		for (int changes = really ? 1 + this.random.nextInt(4) : 0; changes > 0; changes--) {
			int at = this.random.nextInt(spoilt.length());
			spoilt.replace(at, Math.min(spoilt.length(), at + this.random.nextInt(3)), pick(FRAGMENTS));
		}
		return spoilt.toString();
	}

	private void attempt(Supplier<Object> input) {
		try {
			assertThat(input.get()).isNotNull();
			this.results++;
		}
		catch (TabulationException ex) {
			assertThat(ex).hasMessageEndingWith(".");
			this.refusals.add(ex.code());
		}
	}

	private SegmentRules rules() {
		List<SegmentRules.ComponentRule> components = sane()
				? List.of(new SegmentRules.ComponentRule("Composition", sane() ? 133 : number(), PointsFixtures.SOURCE))
				: list(3, () -> new SegmentRules.ComponentRule(name(), sane() ? 100 : number(), PointsFixtures.SOURCE));
		return new SegmentRules(new ValueTable(ElementValue.GradeRange.ELEVEN_GRADES, Map.of("ME4", value("ME4"))),
				sane() ? 5 : number(), components, pick(SegmentRules.TieBreak.values()), this.random.nextBoolean(),
				pick(DisqualifiedPlaces.values()));
	}

	private ElementValue value(String code) {
		return sane() ? PublishedRules.RULES.values().value(code)
				: new ElementValue(code, points(), ElementValue.GradeRange.ELEVEN_GRADES, list(12, this::points));
	}

	private Performance performance() {
		EntryStatus status = sane() ? EntryStatus.SKATED : pick(EntryStatus.values());
		boolean marked = status == EntryStatus.SKATED || !sane();
		return new Performance(name(), status, marked ? list(3, this::element) : List.of(),
				(marked && sane()) ? List.of(component()) : List.of(), marked ? list(2, this::deduction) : List.of());
	}

	private JudgedElement element() {
		return new JudgedElement(sane() ? 1 + this.random.nextInt(9) : number(), code(),
				sane() ? JudgedElement.ElementWorth.COUNTS : pick(JudgedElement.ElementWorth.values()),
				sane() ? null : points(), marks(this::grade));
	}

	private JudgedComponent component() {
		return new JudgedComponent(sane() ? "Composition" : name(),
				marks(() -> sane() ? new Points(25 * (1 + this.random.nextInt(40))) : points()));
	}

	private DeductionRule.Deduction deduction() {
		return new DeductionRule.Deduction(name(), sane() ? 1 : number(), sane() ? new Points(100) : points(), "");
	}

	private EntryTotals totals() {
		List<EntryTotals.@Nullable SegmentTotal> totals = new ArrayList<>();
		for (int i = 0; i < (sane() ? 2 : this.random.nextInt(4)); i++) {
			totals.add((this.random.nextInt(4) == 0) ? null
					: new EntryTotals.SegmentTotal(sane() ? 1 + this.random.nextInt(4) : number(),
							sane() ? new Points(6000 + this.random.nextInt(3)) : points()));
		}
		return new EntryTotals(name(), sane() ? EntryStatus.SKATED : pick(EntryStatus.values()), totals);
	}

	private <T> List<@Nullable T> marks(Supplier<T> mark) {
		List<@Nullable T> marks = new ArrayList<>();
		for (int i = 0; i < (sane() ? 5 : this.random.nextInt(7)); i++) {
			marks.add((this.random.nextInt(8) == 0) ? null : mark.get());
		}
		return marks;
	}

	private Integer grade() {
		return sane() ? this.random.nextInt(11) - 5 : number();
	}

	private Points points() {
		return new Points(number());
	}

	private Integer number() {
		return NUMBERS[this.random.nextInt(NUMBERS.length)];
	}

	private String code() {
		return sane() ? "ME4" : pick("", "ME4", "PB3", "XX", "\u0000", "😀");
	}

	private boolean sane() {
		return this.random.nextInt(24) != 0;
	}

	private String name() {
		return pick("A", "B", "C", "D", "E", "F", "G", "H", "\u0000", "😀", "=1+1", sane() ? "I" : " ");
	}

	private <T> List<T> list(int most, Supplier<T> element) {
		return Stream.generate(element).limit(this.random.nextInt(most + 1)).toList();
	}

	@SafeVarargs
	private <T> T pick(T... values) {
		return values[this.random.nextInt(values.length)];
	}

}
