package rimebook.music;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;

import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.mp4.Mp4MetadataReader;
import com.drew.metadata.mp4.Mp4Directory;
import com.drew.metadata.mp4.media.Mp4SoundDirectory;
import com.drew.metadata.mp4.media.Mp4VideoDirectory;
import org.apache.tika.detect.DefaultDetector;
import org.apache.tika.detect.Detector;
import org.apache.tika.exception.TikaException;
import org.apache.tika.metadata.Metadata;
import org.apache.tika.metadata.XMPDM;
import org.apache.tika.parser.ParseContext;
import org.apache.tika.parser.mp3.Mp3Parser;
import org.gagravarr.flac.FlacFile;
import org.gagravarr.flac.FlacInfo;
import org.gagravarr.ogg.OggFile;
import org.gagravarr.ogg.OggPacket;
import org.gagravarr.ogg.OggStreamIdentifier;
import org.gagravarr.ogg.audio.OggAudioStatistics;
import org.gagravarr.opus.OpusFile;
import org.gagravarr.vorbis.VorbisFile;
import org.springframework.core.io.InputStreamSource;
import org.springframework.stereotype.Component;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Finds by its content alone what a file is and how long its sound. Nothing is played and
 * nothing unpacked; a file that claims what it does not have is refused.
 */
@Component
class Recognition {

	/** Larger pictures and texts beside the sound are not read, in bytes. */
	private static final int MOST_BESIDE = 8_000_000;

	/**
	 * What sounds for less than a second is a file that was broken after its beginning.
	 */
	private static final int SHORTEST = 1000;

	private static final String OGG = "application/ogg";

	private static final int OPUS_RATE = 48_000;

	private final Detector detector = new DefaultDetector();

	private final Mp3Parser mp3 = new Mp3Parser();

	Recognition() {
		this.mp3.setMaxRecordSize(MOST_BESIDE);
	}

	/**
	 * Look at a file.
	 * @param length in bytes
	 * @throws RuleViolationException {@code music-unknown} if it is none that is taken,
	 * {@code music-broken} if it cannot be read or has no sound
	 */
	Recognised recognise(InputStreamSource file, long length) throws IOException {
		return recognise(file, length, SHORTEST);
	}

	/**
	 * The same for what may be shorter.
	 * @param shortest in milliseconds
	 */
	Recognised recognise(InputStreamSource file, long length, int shortest) throws IOException {
		MusicKind kind = kind(file);
		long milliseconds;
		try (InputStream bytes = new BufferedInputStream(file.getInputStream())) {
			milliseconds = milliseconds(kind, bytes, length);
		}
		catch (IOException | RuntimeException | TikaException | SAXException | UnsupportedAudioFileException
				| ImageProcessingException ex) {
			if (ex instanceof RuleViolationException refused) {
				throw refused;
			}
			throw broken(kind);
		}
		if (milliseconds < shortest) {
			throw broken(kind);
		}
		return new Recognised(kind, milliseconds);
	}

	private MusicKind kind(InputStreamSource file) throws IOException {
		try (InputStream bytes = new BufferedInputStream(file.getInputStream())) {
			String type = this.detector.detect(bytes, new Metadata()).getBaseType().toString();
			return MusicKind.of(type.equals(OGG) ? inOgg(bytes) : type).orElseThrow(Recognition::unknown);
		}
	}

	/** What is in an Ogg file stands in its first packet; empty where there is none. */
	private static String inOgg(InputStream bytes) throws IOException {
		OggPacket first = new OggFile(bytes).getPacketReader().getNextPacket();
		return (first != null) ? OggStreamIdentifier.identifyType(first).mimetype : "";
	}

	private static RuleViolationException unknown() {
		return new RuleViolationException("music-unknown", "file", Sentence.of("music.unknown"));
	}

	private static RuleViolationException broken(MusicKind kind) {
		return new RuleViolationException("music-broken", "file", Sentence.of("music.broken", kind.name()));
	}

	private long milliseconds(MusicKind kind, InputStream bytes, long length)
			throws IOException, TikaException, SAXException, UnsupportedAudioFileException, ImageProcessingException {
		return switch (kind) {
			case MP3 -> mp3(bytes);
			case WAV -> wav(bytes, length);
			case FLAC -> flac(bytes);
			case VORBIS -> vorbis(bytes);
			case OPUS -> opus(bytes);
			case M4A -> mp4(bytes);
		};
	}

	/** Every frame is counted, so files of changing rates are measured, too. */
	private long mp3(InputStream bytes) throws IOException, TikaException, SAXException {
		Metadata found = new Metadata();
		this.mp3.parse(bytes, new DefaultHandler(), found, new ParseContext());
		String seconds = found.get(XMPDM.DURATION);
		return (seconds != null) ? Math.round(1000 * Double.parseDouble(seconds)) : 0;
	}

	private static long wav(InputStream bytes, long length) throws IOException, UnsupportedAudioFileException {
		AudioFileFormat found = AudioSystem.getAudioFileFormat(bytes);
		long frames = found.getFrameLength();
		if (frames * found.getFormat().getFrameSize() > length) {
			throw new IOException("The file ends before its sound");
		}
		return milliseconds(frames, found.getFormat().getFrameRate());
	}

	private static long flac(InputStream bytes) throws IOException {
		try (FlacFile file = FlacFile.open(bytes)) {
			FlacInfo info = file.getInfo();
			return milliseconds(info.getNumberOfSamples(), info.getSampleRate());
		}
	}

	private static long vorbis(InputStream bytes) throws IOException {
		try (VorbisFile file = new VorbisFile(new OggFile(bytes))) {
			return milliseconds(lastGranule(new OggAudioStatistics(file, file)), file.getInfo().getSampleRate());
		}
	}

	/**
	 * Opus counts 48,000 a second whatever it was made from, and what comes before the
	 * sound is counted, too: RFC 7845, sections 4 and 5.1.
	 */
	private static long opus(InputStream bytes) throws IOException {
		try (OpusFile file = new OpusFile(new OggFile(bytes))) {
			long granule = lastGranule(new OggAudioStatistics(file, file));
			return milliseconds(granule - file.getInfo().getPreSkip(), OPUS_RATE);
		}
	}

	private static long lastGranule(OggAudioStatistics counted) throws IOException {
		counted.calculate();
		return counted.getLastGranule();
	}

	/** Sound alone: with moving pictures it is no music. */
	private static long mp4(InputStream bytes) throws IOException, ImageProcessingException {
		var found = Mp4MetadataReader.readMetadata(bytes);
		Mp4Directory movie = found.getFirstDirectoryOfType(Mp4Directory.class);
		if (found.containsDirectoryOfType(Mp4VideoDirectory.class)
				|| !found.containsDirectoryOfType(Mp4SoundDirectory.class)) {
			throw unknown();
		}
		Long duration = (movie != null) ? movie.getLongObject(Mp4Directory.TAG_DURATION) : null;
		Long scale = (movie != null) ? movie.getLongObject(Mp4Directory.TAG_TIME_SCALE) : null;
		return (duration != null && scale != null) ? milliseconds(duration, scale) : 0;
	}

	private static long milliseconds(long samples, double rate) {
		return (rate > 0) ? Math.round(1000 * samples / rate) : 0;
	}

	/**
	 * What was found.
	 *
	 * @param milliseconds how long the sound is
	 */
	record Recognised(MusicKind kind, long milliseconds) {
	}

}
