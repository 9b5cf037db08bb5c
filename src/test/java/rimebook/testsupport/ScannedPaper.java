package rimebook.testsupport;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** What a camera reads on paper. */
public final class ScannedPaper {

	private static final int[] CLOSER = { 150, 220, 300 };

	private ScannedPaper() {
	}

	/** What a drawing on the first sheet says to a camera, which comes closer. */
	public static Optional<String> of(PDDocument document) throws IOException {
		Optional<String> read = Optional.empty();
		for (int i = 0; i < CLOSER.length && read.isEmpty(); i++) {
			read = read(new PDFRenderer(document).renderImageWithDPI(0, CLOSER[i]));
		}
		return read;
	}

	private static Optional<String> read(BufferedImage sheet) {
		int width = sheet.getWidth();
		RGBLuminanceSource light = new RGBLuminanceSource(width, sheet.getHeight(),
				sheet.getRGB(0, 0, width, sheet.getHeight(), null, 0, width));
		try {
			return Optional.of(new QRCodeReader()
				.decode(new BinaryBitmap(new HybridBinarizer(light)), Map.of(DecodeHintType.TRY_HARDER, true))
				.getText());
		}
		catch (ReaderException ex) {
			return Optional.empty();
		}
	}

}
