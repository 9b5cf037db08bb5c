package rimebook.music;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

/** Sound of a known length, made by the platform itself. */
public final class Tones {

	/** Samples a second. */
	static final int RATE = 8000;

	private Tones() {
	}

	/** A WAV file of so many milliseconds; a different pitch makes a different file. */
	public static byte[] wav(int milliseconds, int pitch) {
		byte[] samples = new byte[RATE * milliseconds / 1000];
		for (int at = 0; at < samples.length; at++) {
			samples[at] = (byte) (128 + 60 * Math.sin(2 * Math.PI * pitch * at / RATE));
		}
		AudioFormat format = new AudioFormat(RATE, 8, 1, false, false);
		ByteArrayOutputStream file = new ByteArrayOutputStream();
		try (AudioInputStream sound = new AudioInputStream(new ByteArrayInputStream(samples), format, samples.length)) {
			AudioSystem.write(sound, AudioFileFormat.Type.WAVE, file);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return file.toByteArray();
	}

}
