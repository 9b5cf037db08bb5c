package rimebook.tabulation.points;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

import rimebook.tabulation.SegmentKind;

/** The rule set that comes with the product, read where it lies. */
final class PublishedRules {

	private static final Path FOLDER = Path.of("src", "main", "resources", "rules", "synchronized-2025-26");

	static final PointsRules RULES = PointsRules.read(texts());

	static final SegmentRules SHORT = RULES.segment(SegmentKind.SHORT, "senior");

	static final SegmentRules FREE = RULES.segment(SegmentKind.FREE, "senior");

	private PublishedRules() {
	}

	static PointsRules.RuleTexts texts() {
		return new PointsRules.RuleTexts(text("settings"), text("values"), text("components"), text("deductions"),
				text("elements"));
	}

	private static String text(String name) {
		try {
			return Files.readString(FOLDER.resolve(name + ".csv"));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
