package rimebook.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.time.Instant;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

class AnchorTests {

	private static final String DIGEST = "3fa9c0de".repeat(8);

	private static final Instant WRITTEN = Instant.parse("2026-11-25T14:02:11.5Z");

	private static final Anchor ANCHOR = Anchor.of(1234, DIGEST, WRITTEN);

	@TempDir
	private Path directory;

	@Test
	void isOneLineOfText() {
		assertThat(ANCHOR.text()).isEqualTo("line 1234 " + DIGEST + " 2026-11-25T14:02:11.500Z");
		assertThat(Anchor.parse(ANCHOR.text())).contains(ANCHOR);
		assertThat(ANCHOR.shortDigest()).isEqualTo("3fa9c0de3fa9c0de");
	}

	@Test
	void keepsSignatureAndWhenItWasSeen() {
		Anchor signed = RecordKey.make().sign(ANCHOR);
		Anchor seen = new Anchor(1234, DIGEST, WRITTEN, signed.signature(), WRITTEN.plusSeconds(2));
		assertThat(seen.text()).isEqualTo(signed.text() + " seen 2026-11-25T14:02:13.500Z");
		assertThat(Anchor.parse(seen.text())).contains(seen);
	}

	@ParameterizedTest
	@ValueSource(strings = { "1234 3fa9c0de3fa9", " line  1234: 3FA9C0DE3FA9…  ", "1234 3fa9c0de3fa9..." })
	void mayBeCopiedFromPaper(String text) {
		assertThat(Anchor.parse(text)).contains(new Anchor(1234, "3fa9c0de3fa9", null, "", null));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "line", "line 12", "line 12 3fa9", "line -1 3fa9c0de3fa9", "line 12 3fa9c0de3faz",
			"line 12 3fa9c0de3fa9 yesterday", "line 12 3fa9c0de3fa9 2026-13-25T14:02:11.500Z",
			"line 12 3fa9c0de3fa9 signed AAAA", "line 1234567890123456789 3fa9c0de3fa9" })
	void otherTextsAreNone(String text) {
		assertThat(Anchor.parse(text)).isEmpty();
	}

	@Test
	void aSignatureIsTheSameEachTimeAndOfOneKeyAndOneLine() throws IOException {
		RecordKey key = RecordKey.make();
		Anchor signed = key.sign(ANCHOR);
		PublicKey open = RecordKey.publicKey(key.publicPem());
		assertThat(key.sign(ANCHOR)).isEqualTo(signed);
		assertThat(RecordKey.isSignedBy(open, signed)).isTrue();
		assertThat(RecordKey.isSignedBy(open, ANCHOR)).isFalse();
		assertThat(RecordKey.isSignedBy(open, RecordKey.make().sign(ANCHOR))).isFalse();
		Anchor other = Anchor.of(1235, DIGEST, WRITTEN);
		assertThat(RecordKey.isSignedBy(open, other.signed(signed.signature()))).isFalse();
		Anchor later = Anchor.of(1234, DIGEST, WRITTEN.plusMillis(1));
		assertThat(RecordKey.isSignedBy(open, later.signed(signed.signature()))).isFalse();
	}

	@Test
	void aFileHoldsBothKeys() throws IOException {
		RecordKey key = RecordKey.make();
		Path file = Files.writeString(this.directory.resolve("record.key"), key.bothPem());
		assertThat(RecordKey.read(file).sign(ANCHOR)).isEqualTo(key.sign(ANCHOR));
		AnchorSigning signing = new AnchorSigning(file.toString());
		assertThat(signing.sign(ANCHOR)).isEqualTo(key.sign(ANCHOR));
		assertThat(signing.publicKey()).contains(key.publicPem());
		assertThat(signing.fault()).isEmpty();
	}

	@Test
	void aFileThatHoldsNoPairIsRefused() throws IOException {
		String both = RecordKey.make().bothPem();
		String foreign = both.substring(0, both.indexOf("-----BEGIN PUBLIC")) + RecordKey.make().publicPem();
		assertThatIOException().isThrownBy(() -> read("nothing")).withMessage("it has no block \"PRIVATE KEY\"");
		assertThatIOException().isThrownBy(() -> read(RecordKey.make().publicPem()))
			.withMessage("it has no block \"PRIVATE KEY\"");
		assertThatIOException().isThrownBy(() -> read(foreign)).withMessageContaining("do not belong together");
		assertThatIOException().isThrownBy(() -> read(both.replaceFirst("MC4CAQ", "AAAAAA")))
			.withMessage("it holds no Ed25519 key");
	}

	/** A competition begins all the same, and the page says what is missing. */
	@Test
	void withoutItsKeyTheServiceGivesUnsignedAnchors() {
		String absent = this.directory.resolve("absent.key").toString();
		assertThat(new AnchorSigning(absent).fault()).startsWith(absent + ": ");
		assertThat(new AnchorSigning(absent).sign(ANCHOR)).isEqualTo(ANCHOR);
		assertThat(new AnchorSigning("").fault()).isEmpty();
		assertThat(new AnchorSigning("").publicKey()).isEmpty();
	}

	private RecordKey read(String text) throws IOException {
		return RecordKey.read(Files.writeString(this.directory.resolve("some.key"), text));
	}

}
