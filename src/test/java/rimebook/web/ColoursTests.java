package rimebook.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Contrast by WCAG 2.2, success criterion 1.4.3, read from the style sheet itself. */
class ColoursTests {

	private static final Pattern TOKEN = Pattern.compile("--([a-z-]+):\\s*(#[0-9a-f]{6});");

	private static final List<String> TEXTS = List.of("ink", "ink-soft", "lantern", "signed", "stop");

	private static final String SHEET = sheet();

	private static final String REHEARSAL = "html[data-rehearsal]";

	static Stream<Arguments> pairs() {
		return faces().flatMap((face) -> TEXTS.stream()
			.flatMap((text) -> Stream.of("ground", "surface").map((ground) -> Arguments.of(face, text, ground))));
	}

	@ParameterizedTest(name = "{0}: {1} on {2}")
	@MethodSource("pairs")
	void textStandsOutFromItsGround(String face, String text, String ground) {
		Map<String, String> tokens = tokens(face);
		assertThat(contrast(tokens.get(text), tokens.get(ground))).isGreaterThanOrEqualTo(4.5);
	}

	/** Filled buttons write in the colour of the surface. */
	@ParameterizedTest(name = "{0}")
	@MethodSource("faces")
	void buttonsStandOutFromTheirLettering(String face) {
		Map<String, String> tokens = tokens(face);
		for (String fill : TEXTS) {
			assertThat(contrast(tokens.get("surface"), tokens.get(fill))).isGreaterThanOrEqualTo(4.5);
		}
	}

	static Stream<String> faces() {
		return Stream.of(":root", ".board", "html:not([data-rehearsal]) .public", REHEARSAL, REHEARSAL + " .board");
	}

	@Test
	void theBandOfARehearsalStandsOut() {
		Map<String, String> tokens = tokens(REHEARSAL);
		assertThat(contrast(tokens.get("training-ink"), tokens.get("training"))).isGreaterThanOrEqualTo(7);
	}

	@Test
	void theContrastIsComputedAsTheGuidelinesSay() {
		assertThat(contrast("#000000", "#ffffff")).isEqualTo(21.0);
		assertThat(contrast("#777777", "#ffffff")).isBetween(4.47, 4.49);
	}

	@Test
	void colourIsNamedInTheTokensOnly() {
		String rest = SHEET.substring(SHEET.indexOf("/* Ground */"), SHEET.indexOf("/* Paper:"));
		assertThat(rest).doesNotContainPattern("#[0-9a-fA-F]{3,8}\\b").doesNotContain("rgb(", "hsl(");
	}

	@Test
	void textHasSixSizes() {
		Matcher sizes = Pattern.compile("--size-\\d+:").matcher(SHEET);
		assertThat(sizes.results().count()).isEqualTo(6);
		assertThat(Pattern.compile("font-size:\\s*([^;]+);").matcher(SHEET).results().map((found) -> found.group(1)))
			.allMatch((size) -> size.startsWith("var(--size-") || List.of("100%", "0.95em", "10.5pt").contains(size));
	}

	/** What a rehearsal does not colour anew is as it is by day. */
	private static Map<String, String> tokens(String face) {
		int start = SHEET.indexOf(face + " {");
		Matcher token = TOKEN.matcher(SHEET.substring(start, SHEET.indexOf('}', start)));
		Map<String, String> tokens = face.equals(REHEARSAL) ? tokens(":root") : new HashMap<>();
		while (token.find()) {
			tokens.put(token.group(1), token.group(2));
		}
		return tokens;
	}

	private static double contrast(String one, String other) {
		double[] light = { luminance(one), luminance(other) };
		Arrays.sort(light);
		return (light[1] + 0.05) / (light[0] + 0.05);
	}

	private static double luminance(String colour) {
		return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
	}

	private static double channel(String colour, int at) {
		double part = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
		return (part <= 0.04045) ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
	}

	private static String sheet() {
		try (InputStream sheet = ColoursTests.class.getResourceAsStream("/static/css/rimebook.css")) {
			return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
