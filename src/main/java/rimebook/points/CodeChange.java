package rimebook.points;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import rimebook.shared.RuleViolationException;
import rimebook.tabulation.TabulationException;
import rimebook.tabulation.points.ElementCode;
import rimebook.tabulation.points.ValueTable;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Changes one thing about a called code within what the table of values has: its level,
 * its additional part, its downgrade. Nothing is dropped silently: what the table does
 * not have is refused.
 */
final class CodeChange {

	private static final int MOST_DOWNGRADES = 2;

	private final ValueTable values;

	CodeChange(ValueTable values) {
		this.values = values;
	}

	/** The code at another level. */
	String level(String code, String sign) {
		return known(with(code, level(sign)));
	}

	/** The code with its part at another level; an empty sign takes the part away. */
	String part(String code, String sign) {
		ElementCode before = parsed(code).orElseThrow(() -> refused(Sentence.of("points.code.no-level", code)));
		if (sign.isEmpty()) {
			return known(new ElementCode(before.element(), before.level(), null, before.downgrades()));
		}
		String part = partOf(before.element())
			.orElseThrow(() -> refused(Sentence.of("points.code.no-part", before.element())));
		return known(new ElementCode(before.element(), before.level(),
				new ElementCode.ElementFeature(part, level(sign)), before.downgrades()));
	}

	/** The code with the next downgrade that the table has, after the last with none. */
	String downgrade(String code) {
		ElementCode before = parsed(code).orElseThrow(() -> refused(Sentence.of("points.code.no-level", code)));
		for (int step = 1; step <= MOST_DOWNGRADES; step++) {
			ElementCode next = downgraded(before, (before.downgrades() + step) % (MOST_DOWNGRADES + 1));
			if (has(next)) {
				return next.toString();
			}
		}
		throw refused(Sentence.of("points.code.no-downgrade", code));
	}

	/** The signs of the levels that the code can be given, in order: "B1234". */
	String levels(String code) {
		return signs((level) -> with(code, level));
	}

	/** The signs of the levels that the part of the code can be given; empty for none. */
	String parts(String code) {
		return parsed(code).flatMap(
				(before) -> partOf(before.element()).map((part) -> signs((level) -> new ElementCode(before.element(),
						before.level(), new ElementCode.ElementFeature(part, level), before.downgrades()))))
			.orElse("");
	}

	/** Tell whether the code has a part that can be taken away. */
	boolean canLosePart(String code) {
		return parsed(code).filter((before) -> before.feature() != null)
			.filter((before) -> has(new ElementCode(before.element(), before.level(), null, before.downgrades())))
			.isPresent();
	}

	/** Tell whether the table has another downgrade of the code. */
	boolean canDowngrade(String code) {
		return parsed(code)
			.filter((before) -> Stream.of(0, 1, 2)
				.anyMatch((step) -> step != before.downgrades() && has(downgraded(before, step))))
			.isPresent();
	}

	/** The sign of the element that a code is about: "I" for "I4+pi3". */
	static String element(String code) {
		return ElementCode.elementOf(code);
	}

	private String signs(Function<ElementCode.ElementLevel, ElementCode> made) {
		return Arrays.stream(ElementCode.ElementLevel.values())
			.filter((level) -> has(made.apply(level)))
			.map(ElementCode.ElementLevel::sign)
			.collect(Collectors.joining());
	}

	private static ElementCode with(String code, ElementCode.ElementLevel level) {
		return parsed(code)
			.map((before) -> new ElementCode(before.element(), level, before.feature(), before.downgrades()))
			.orElseGet(() -> new ElementCode(code, level, null, 0));
	}

	private static ElementCode downgraded(ElementCode code, int downgrades) {
		return new ElementCode(code.element(), code.level(), code.feature(), downgrades);
	}

	private Optional<String> partOf(String element) {
		return this.values.values()
			.keySet()
			.stream()
			.flatMap((code) -> parsed(code).stream())
			.filter((code) -> code.element().equals(element))
			.map(ElementCode::feature)
			.filter(Objects::nonNull)
			.map(ElementCode.ElementFeature::sign)
			.findFirst();
	}

	private boolean has(ElementCode code) {
		return this.values.find(code.toString()).isPresent();
	}

	private String known(ElementCode code) {
		if (!has(code)) {
			List<String> alike = alike(code);
			throw refused(alike.isEmpty() ? Sentence.of("points.code.not-in-table", code.toString())
					: Sentence.of("points.code.others-in-table", code.toString(), Series.withCommas(alike)));
		}
		return code.toString();
	}

	/** What the table has of the same element and level. */
	private List<String> alike(ElementCode wanted) {
		return this.values.values()
			.keySet()
			.stream()
			.flatMap((code) -> parsed(code).stream())
			.filter((code) -> code.element().equals(wanted.element()) && code.level() == wanted.level())
			.map(ElementCode::toString)
			.toList();
	}

	private static ElementCode.ElementLevel level(String sign) {
		return Arrays.stream(ElementCode.ElementLevel.values())
			.filter((level) -> level.sign().equals(sign))
			.findFirst()
			.orElseThrow(() -> refused(Sentence.of("points.code.not-a-level", sign)));
	}

	private static Optional<ElementCode> parsed(String code) {
		try {
			return Optional.of(ElementCode.parse(code));
		}
		catch (TabulationException ex) {
			return Optional.empty();
		}
	}

	private static RuleViolationException refused(Sentence sentence) {
		return new RuleViolationException("code-change", "value", sentence);
	}

}
