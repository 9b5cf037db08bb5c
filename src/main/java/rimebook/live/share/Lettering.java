package rimebook.live.share;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Sets lines of text in one cut of the typeface. A letter that it lacks is an empty box.
 * Not for several threads at once.
 */
final class Lettering {

	private static final String FOLDER = "/liberation/LiberationSans-";

	private static final String MORE = "…";

	private final TrueTypeFont font;

	private final CmapLookup letters;

	private Lettering(TrueTypeFont font) throws IOException {
		this.font = font;
		this.letters = font.getUnicodeCmapLookup();
	}

	/**
	 * Read a cut.
	 * @param cut {@code Regular} or {@code Bold}
	 */
	static Lettering of(String cut) {
		try (InputStream file = Lettering.class.getResourceAsStream(FOLDER + cut + ".ttf")) {
			if (file == null) {
				throw new IllegalStateException("The typeface did not come along: " + cut);
			}
			return new Lettering(new TTFParser().parse(new RandomAccessReadBuffer(file)));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** How wide a text is at a size. */
	double width(String text, double size) {
		return text.codePoints().mapToDouble((letter) -> advance(letter) * size).sum();
	}

	/** Write a text; its base line is at {@code y}. */
	void write(Graphics2D page, String text, double x, double y, double size) {
		double at = x;
		for (int letter : text.codePoints().toArray()) {
			AffineTransform place = AffineTransform.getTranslateInstance(at, y);
			place.scale(size / units(), -size / units());
			page.fill(place.createTransformedShape(outline(letter)));
			at += advance(letter) * size;
		}
	}

	/** Cut a text into lines of a width; what does not fit into the last is left out. */
	List<String> lines(String text, double size, double width, int most) {
		List<String> lines = new ArrayList<>();
		StringBuilder line = new StringBuilder();
		for (String word : text.strip().split("\\s+")) {
			String longer = line.isEmpty() ? word : line + " " + word;
			if (!line.isEmpty() && width(longer, size) > width) {
				lines.add(line.toString());
				line = new StringBuilder(word);
			}
			else {
				line = new StringBuilder(longer);
			}
		}
		lines.add(line.toString());
		if (lines.size() <= most) {
			return lines.stream().map((one) -> fitted(one, size, width)).toList();
		}
		List<String> kept = new ArrayList<>(lines.subList(0, most - 1));
		kept.add(fitted(String.join(" ", lines.subList(most - 1, lines.size())), size, width));
		return kept;
	}

	/** The beginning of a text as far as there is room for it. */
	String fitted(String text, double size, double width) {
		if (width(text, size) <= width) {
			return text;
		}
		int end = text.length();
		while (end > 0 && width(text.substring(0, end) + MORE, size) > width) {
			end = text.offsetByCodePoints(end, -1);
		}
		return text.substring(0, end).stripTrailing() + MORE;
	}

	private double advance(int letter) {
		try {
			return this.font.getAdvanceWidth(this.letters.getGlyphId(letter)) / (double) units();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private Path2D outline(int letter) {
		try {
			GlyphData glyph = this.font.getGlyph().getGlyph(this.letters.getGlyphId(letter));
			return (glyph != null) ? glyph.getPath() : new Path2D.Double();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private int units() {
		try {
			return this.font.getUnitsPerEm();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
