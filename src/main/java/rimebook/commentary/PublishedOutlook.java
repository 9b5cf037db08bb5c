package rimebook.commentary;

import java.util.Comparator;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.wording.Sentence;

/** Says what a published standing says of the teams that are still to skate. */
final class PublishedOutlook {

	private PublishedOutlook() {
	}

	/**
	 * Say it.
	 * @param standing the segment's, {@code null} before the first
	 * @param now the entry on the ice, of which is told first; {@code null} for none
	 */
	static CommentaryView.Outlook of(@Nullable Standing standing, @Nullable String now) {
		Standing.Outlook outlook = (standing != null) ? standing.outlook() : null;
		if (outlook == null) {
			return CommentaryView.Outlook.NONE;
		}
		List<Sentence> chances = outlook.chances()
			.stream()
			.sorted(Comparator.comparing((chance) -> !chance.entry().equals(now)))
			.map(PublishedOutlook::words)
			.toList();
		return new CommentaryView.Outlook(outlook.needs(), chances, outlook.flips());
	}

	/** In the event where that ends with this segment, since that is what is asked. */
	private static Sentence words(Standing.Outlook.Chance chance) {
		Standing.Outlook.Range event = chance.event();
		Standing.Outlook.Range range = (event != null) ? event : chance.segment();
		return Sentence.of(key(range), chance.team(), range.best(), range.worst(),
				Sentence.of((event != null) ? "possible.in-the-event" : "possible.in-the-segment"));
	}

	private static String key(Standing.Outlook.Range range) {
		if (range.isCertain()) {
			return "possible.certain";
		}
		if (!range.exact()) {
			return "possible.within";
		}
		return (range.worst() - range.best() == 1) ? "possible.either" : "possible.range";
	}

}
