package rimebook.pages;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;

import javax.imageio.ImageIO;

import com.google.zxing.qrcode.encoder.ByteMatrix;

/**
 * The same drawing as a {@link QrCode} as a picture of dots, for paper: several dots a
 * module, so that it stays sharp at any size.
 */
public final class QrPicture {

	private static final int DOTS = 10;

	private static final int WHITE = 0xffffff;

	private QrPicture() {
	}

	/** Draw a text as a {@code data:} address of a PNG picture. */
	public static String of(String text) {
		ByteMatrix modules = QrCode.modules(text);
		int side = (modules.getWidth() + 2 * QrCode.QUIET) * DOTS;
		BufferedImage picture = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_BINARY);
		for (int y = 0; y < side; y++) {
			for (int x = 0; x < side; x++) {
				picture.setRGB(x, y, isDark(modules, x / DOTS - QrCode.QUIET, y / DOTS - QrCode.QUIET) ? 0 : WHITE);
			}
		}
		return "data:image/png;base64," + Base64.getEncoder().encodeToString(png(picture));
	}

	private static boolean isDark(ByteMatrix modules, int x, int y) {
		return x >= 0 && y >= 0 && x < modules.getWidth() && y < modules.getHeight() && modules.get(x, y) == 1;
	}

	private static byte[] png(BufferedImage picture) {
		try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
			ImageIO.write(picture, "png", bytes);
			return bytes.toByteArray();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
