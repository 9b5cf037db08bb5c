package rimebook.music;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of files that are taken, as browsers play them. */
public enum MusicKind {

	/** MPEG audio, layer III. */
	MP3("mp3", "audio/mpeg", "audio/mpeg"),

	/** Samples as they are. */
	WAV("wav", "audio/wav", "audio/vnd.wave", "audio/x-wav", "audio/wav"),

	/** Samples packed without loss. */
	FLAC("flac", "audio/flac", "audio/x-flac", "audio/flac"),

	/** Vorbis in Ogg. */
	VORBIS("ogg", "audio/ogg", "audio/vorbis"),

	/** Opus in Ogg. */
	OPUS("opus", "audio/ogg", "audio/opus"),

	/**
	 * AAC or ALAC in MP4. What is in such a file is only known once it is read: with
	 * moving pictures it is none of these.
	 */
	M4A("m4a", "audio/mp4", "audio/mp4", "audio/x-m4a", "video/mp4", "application/mp4", "video/quicktime");

	private final String ending;

	private final String playedAs;

	private final List<String> found;

	MusicKind(String ending, String playedAs, String... found) {
		this.ending = ending;
		this.playedAs = playedAs;
		this.found = List.of(found);
	}

	/** How the name of such a file ends, without a dot. */
	public String ending() {
		return this.ending;
	}

	/** The type that a browser is told. */
	public String playedAs() {
		return this.playedAs;
	}

	/** The kind of a type that was found by content; empty for what is not taken. */
	static Optional<MusicKind> of(String type) {
		return Arrays.stream(values()).filter((kind) -> kind.found.contains(type)).findFirst();
	}

}
