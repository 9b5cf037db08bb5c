package rimebook.live;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.jspecify.annotations.Nullable;

import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.live.share.ShareCard;
import rimebook.live.share.ShareDrawing;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;

/**
 * The pictures that go with the addresses of standings. Each is drawn once, when somebody
 * first asks for it: a version's picture never changes but for its headline, and the
 * judges' cards must not wait for a drawing.
 */
@Component
class SharePictures {

	private static final long MOST = 100;

	private final MessageSource messages;

	private final Cache<ShareCard, byte[]> drawn = Caffeine.newBuilder().maximumSize(MOST).build();

	/** Reads its typeface when it is first needed, not at the start. */
	private final Supplier<ShareDrawing> drawing = new Supplier<>() {

		private @Nullable ShareDrawing made;

		@Override
		public synchronized ShareDrawing get() {
			ShareDrawing ready = (this.made != null) ? this.made : new ShareDrawing();
			this.made = ready;
			return ready;
		}

	};

	SharePictures(MessageSource messages) {
		this.messages = messages;
	}

	/**
	 * Draw a version.
	 * @param headline the state of things if it is the newest, else empty
	 */
	byte[] png(CompetitionView competition, ResultVersion version, String headline, Locale language) {
		ShareCard card = card(competition, version, headline, language);
		byte[] png = this.drawn.get(card, (absent) -> this.drawing.get().png(absent));
		return (png != null) ? png : new byte[0];
	}

	private ShareCard card(CompetitionView competition, ResultVersion version, String headline, Locale language) {
		Standing standing = version.standing();
		PageWords words = new PageWords(language);
		boolean official = version.state() == ResultVersion.ResultState.OFFICIAL;
		String far = standing.isComplete() ? say(language, "live.standing.all", standing.starters())
				: say(language, "live.standing.after", standing.skated(), standing.starters());
		String state = far + " · " + say(language, "live.standing.version", version.number()) + " · "
				+ words.dayAndTime(version.publishedAt(), competition.zone());
		List<ShareCard.Row> rows = standing.rows()
			.stream()
			.flatMap((row) -> Stream.ofNullable(row.place())
				.map((place) -> new ShareCard.Row(words.nth(place), row.team(), figure(row, standing, words))))
			.toList();
		return new ShareCard(competition.name(),
				standing.segment().isEmpty() ? standing.event() : standing.event() + ", " + standing.segment(), state,
				say(language, official ? "live.standing.official" : "live.standing.provisional"), official, headline,
				rows);
	}

	private static String figure(Standing.Row row, Standing standing, PageWords words) {
		if (row.score() != null) {
			return words.points(row.score().total());
		}
		return (row.total() == null) ? ""
				: standing.isByPoints() ? words.points(row.total()) : words.total(row.total());
	}

	private String say(Locale language, String key, Object... arguments) {
		return this.messages.getMessage(key, arguments, language);
	}

}
