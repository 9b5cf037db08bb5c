package rimebook.music;

import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * The music of a team for one segment.
 *
 * @param versions the newest first, which is the one that counts; none where nothing was
 * handed in
 * @param onSite that the team brings it to the rink, {@code null} where nobody said so
 */
public record MusicView(EntryId entry, SegmentId segment, List<Version> versions, @Nullable OnSite onSite) {

	public MusicView {
		versions = List.copyOf(versions);
	}

	/** The version that counts, {@code null} where nothing was handed in. */
	public @Nullable Version current() {
		return this.versions.isEmpty() ? null : this.versions.get(0);
	}

	/** Tell whether there is neither a file that can be played nor one on site. */
	public boolean isMissing() {
		return this.onSite == null && !isPlayable();
	}

	/** Tell whether there is a file that can be played. */
	public boolean isPlayable() {
		Version current = current();
		return current != null && current.here();
	}

	/**
	 * One file that was handed in.
	 *
	 * @param number 1 for the first; a greater one supersedes those before
	 * @param here whether it can be played: it was not deleted, nor left behind by a
	 * restored archive
	 */
	public record Version(VersionId id, int number, File file, boolean here, HandedIn handedIn) {

		/** How long it is, as "3:42". */
		public String length() {
			return MusicWindow.time(this.file.milliseconds() / 1000);
		}

		/**
		 * A file.
		 *
		 * @param name what it was called where it came from
		 * @param sha256 in hexadecimal digits
		 */
		public record File(MusicKind kind, String name, long bytes, long milliseconds, String sha256) {
		}

		/**
		 * That it was handed in.
		 *
		 * @param lateReason why after the deadline, empty in time
		 */
		public record HandedIn(String lateReason, String by, Instant at) {
		}

	}

	/** That a team brings its music to the rink. */
	public record OnSite(String by, Instant at) {
	}

	/** Identity of one version. */
	public record VersionId(UUID value) implements Serializable {

		/**
		 * Read an identity from text.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static VersionId of(String text) {
			return new VersionId(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

}
