package rimebook.music;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/**
 * How long the programme of a segment may be, in seconds, and how music lies in it. The
 * clock counts from the first movement to the last, so music may well begin before and
 * end after: what lies outside is pointed out, never refused.
 *
 * @param shortest {@code null} where only longer than the length counts
 */
record MusicWindow(@Nullable Integer shortest, int length, int longest) {

	static MusicWindow of(SegmentView segment) {
		int length = segment.facts().programmeSeconds();
		Integer shorter = segment.facts().shorterSeconds();
		return new MusicWindow((shorter != null) ? length - shorter : null, length,
				length + segment.facts().toleranceSeconds());
	}

	/** The window as "3:20 to 3:40", or "up to 2:50". */
	Sentence inWords() {
		return (this.shortest != null) ? Sentence.of("music.window", time(this.shortest), time(this.longest))
				: Sentence.of("music.window-up-to", time(this.longest));
	}

	/** How music of that length lies in it; begun seconds count as the clock does. */
	Fit fit(long milliseconds) {
		long seconds = milliseconds / 1000;
		if (seconds > this.longest) {
			return new Fit(false,
					Sentence.of("music.too-long", time(seconds), time(seconds - this.longest), inWords()));
		}
		if (this.shortest != null && seconds < this.shortest) {
			return new Fit(false,
					Sentence.of("music.too-short", time(seconds), time(this.shortest - seconds), inWords()));
		}
		return new Fit(true, Sentence.of("music.fits", time(seconds), inWords()));
	}

	/** Seconds as "3:42". */
	static String time(long seconds) {
		return "%d:%02d".formatted(seconds / 60, seconds % 60);
	}

	/**
	 * How music lies in the window of its segment.
	 *
	 * @param inside whether it is as long as the programme may be
	 * @param words the same for people
	 */
	record Fit(boolean inside, Sentence words) {
	}

}
