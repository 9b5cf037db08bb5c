package rimebook.pages;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code (ISO/IEC 18004) as a drawing: one path of runs of dark modules in a square
 * whose side is counted in modules, the quiet zone of four modules included.
 *
 * @param side the side of the square
 * @param path the dark modules in the path language of SVG
 */
public record QrCode(int side, String path) {

	static final int QUIET = 4;

	/** Draw a text of up to a few hundred characters, a quarter of it may get lost. */
	public static QrCode of(String text) {
		ByteMatrix modules = modules(text);
		return new QrCode(modules.getWidth() + 2 * QUIET, path(modules));
	}

	static ByteMatrix modules(String text) {
		try {
			return Encoder.encode(text, ErrorCorrectionLevel.Q).getMatrix();
		}
		catch (WriterException ex) {
			throw new IllegalArgumentException("Too long for a QR code: " + text, ex);
		}
	}

	private static String path(ByteMatrix modules) {
		StringBuilder path = new StringBuilder();
		for (int y = 0; y < modules.getHeight(); y++) {
			int x = 0;
			while (x < modules.getWidth()) {
				int end = endOfRun(modules, x, y);
				if (modules.get(x, y) == 1) {
					path.append("M%d %dh%dv1h-%dz".formatted(x + QUIET, y + QUIET, end - x, end - x));
				}
				x = end;
			}
		}
		return path.toString();
	}

	private static int endOfRun(ByteMatrix modules, int x, int y) {
		int end = x + 1;
		while (end < modules.getWidth() && modules.get(end, y) == modules.get(x, y)) {
			end++;
		}
		return end;
	}

}
