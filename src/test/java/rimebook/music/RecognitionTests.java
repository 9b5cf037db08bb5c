package rimebook.music;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.ClassPathResource;

import rimebook.shared.RuleViolationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/**
 * The tones are of our own making: a sine of 440 Hz, three seconds long, encoded with
 * FFmpeg; the film has two seconds of black.
 */
class RecognitionTests {

	private final Recognition recognition = new Recognition();

	/** What pads a file at its ends counts for some kinds: at most two frames of it. */
	@ParameterizedTest
	@CsvSource({ "tone-cbr.mp3, MP3, 110", "tone-vbr.mp3, MP3, 110", "tone.flac, FLAC, 0", "tone.ogg, VORBIS, 1",
			"tone.opus, OPUS, 20", "tone.m4a, M4A, 110", "tone.mp4, M4A, 110" })
	void kindAndLengthAreFoundByContent(String name, MusicKind kind, long margin) throws IOException {
		byte[] file = file(name);
		Recognition.Recognised found = this.recognition.recognise(new ByteArrayResource(file), file.length);
		assertThat(found.kind()).isEqualTo(kind);
		assertThat(found.milliseconds()).isCloseTo(3000, within(margin));
	}

	@ParameterizedTest
	@ValueSource(ints = { 1000, 1001, 65_432 })
	void aWavIsAsLongAsItsSamples(int milliseconds) throws IOException {
		byte[] file = Tones.wav(milliseconds, 440);
		assertThat(this.recognition.recognise(new ByteArrayResource(file), file.length).milliseconds())
			.isEqualTo(milliseconds);
	}

	@Test
	void aFilmIsNoMusic() throws IOException {
		assertRefused(file("film.mp4"), "music-unknown");
	}

	/** What lies in an archive is of no interest, however much it would become. */
	@Test
	void archivesAreNotOpened() throws IOException {
		ByteArrayOutputStream zipped = new ByteArrayOutputStream();
		try (ZipOutputStream zip = new ZipOutputStream(zipped)) {
			zip.putNextEntry(new ZipEntry("free.mp3"));
			for (int megabyte = 0; megabyte < 50; megabyte++) {
				zip.write(new byte[1 << 20]);
			}
		}
		assertRefused(zipped.toByteArray(), "music-unknown");
		ByteArrayOutputStream packed = new ByteArrayOutputStream();
		try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
			gzip.write(Tones.wav(1000, 440));
		}
		assertRefused(packed.toByteArray(), "music-unknown");
	}

	/** Of each kind the beginning alone, and the beginning before nonsense. */
	@ParameterizedTest
	@ValueSource(strings = { "tone-cbr.mp3", "tone.flac", "tone.ogg", "tone.opus", "tone.m4a" })
	void aFileThatBreaksOffAtItsBeginningIsRefused(String name) throws IOException {
		byte[] begun = Arrays.copyOf(file(name), 40);
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.recognition.recognise(new ByteArrayResource(begun), begun.length))
			.satisfies((refused) -> assertThat(refused.code()).isIn("music-broken", "music-unknown"));
		byte[] nonsense = Arrays.copyOf(file(name), 5000);
		Arrays.fill(nonsense, 40, nonsense.length, (byte) 0x2A);
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.recognition.recognise(new ByteArrayResource(nonsense), nonsense.length))
			.satisfies((refused) -> assertThat(refused.code()).isIn("music-broken", "music-unknown"));
	}

	private void assertRefused(byte[] file, String code) {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.recognition.recognise(new ByteArrayResource(file), file.length))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo(code));
	}

	private static byte[] file(String name) throws IOException {
		return new ClassPathResource("music/" + name).getContentAsByteArray();
	}

}
