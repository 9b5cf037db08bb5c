package rimebook.tabulation.points;

import java.util.List;
import java.util.Optional;

/** Says a code in words. */
final class CodeWords {

	private static final List<String> DOWNGRADES = List.of("", ", downgraded once", ", downgraded twice");

	private CodeWords() {
	}

	static Optional<String> of(List<PointsRules.ElementName> names, ElementCode code) {
		Optional<String> element = name(names, code.element(), false).map((name) -> name + level(code.level()));
		ElementCode.ElementFeature added = code.feature();
		Optional<String> feature = (added == null) ? Optional.of("")
				: name(names, added.sign(), true).map((name) -> ", with " + name + level(added.level()));
		return element.flatMap((first) -> feature.map((second) -> first + second + DOWNGRADES.get(code.downgrades())));
	}

	/** The name of an element; its sign where it has none. */
	static String ofElement(List<PointsRules.ElementName> names, String sign) {
		return name(names, sign, false).orElse(sign);
	}

	private static Optional<String> name(List<PointsRules.ElementName> names, String sign, boolean feature) {
		return names.stream()
			.filter((name) -> name.sign().equals(sign) && name.feature() == feature)
			.map(PointsRules.ElementName::name)
			.findFirst();
	}

	private static String level(ElementCode.ElementLevel level) {
		return (level == ElementCode.ElementLevel.BASIC) ? ", basic level" : ", level " + level.sign();
	}

}
