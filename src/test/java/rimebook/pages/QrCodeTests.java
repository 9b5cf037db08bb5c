package rimebook.pages;

import java.util.Arrays;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class QrCodeTests {

	private static final int SCALE = 6;

	private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-(\\d+)z");

	@ParameterizedTest
	@ValueSource(strings = { "http://192.168.4.2:8080/judge?code=ACDEFGHJ", "https://rink.example/judge?code=34679XYW",
			"http://a-rather-long-name-of-a-laptop.rink-network.example:18080/judge?code=ACDEFGHJ" })
	void whatIsDrawnIsReadByAScanner(String text) throws ReaderException {
		assertThat(scan(QrCode.of(text))).isEqualTo(text);
	}

	@Test
	void quietZoneIsFourModulesWide() {
		QrCode drawing = QrCode.of("http://192.168.4.2:8080/judge?code=ACDEFGHJ");
		assertThat(RUN.matcher(drawing.path()).results()).isNotEmpty().allSatisfy((run) -> {
			assertThat(number(run, 1)).isGreaterThanOrEqualTo(4);
			assertThat(number(run, 2)).isBetween(4, drawing.side() - 5);
			assertThat(number(run, 1) + number(run, 3)).isLessThanOrEqualTo(drawing.side() - 4);
		});
	}

	private static String scan(QrCode drawing) throws ReaderException {
		int side = drawing.side() * SCALE;
		RGBLuminanceSource picture = new RGBLuminanceSource(side, side, pixels(drawing, side));
		return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(picture))).getText();
	}

	private static int[] pixels(QrCode drawing, int side) {
		int[] pixels = new int[side * side];
		Arrays.fill(pixels, 0xffffff);
		RUN.matcher(drawing.path()).results().forEach((run) -> paint(pixels, side, run));
		return pixels;
	}

	private static void paint(int[] pixels, int side, MatchResult run) {
		for (int y = number(run, 2) * SCALE; y < (number(run, 2) + 1) * SCALE; y++) {
			for (int x = number(run, 1) * SCALE; x < (number(run, 1) + number(run, 3)) * SCALE; x++) {
				pixels[y * side + x] = 0;
			}
		}
	}

	private static int number(MatchResult run, int group) {
		return Integer.parseInt(run.group(group));
	}

}
