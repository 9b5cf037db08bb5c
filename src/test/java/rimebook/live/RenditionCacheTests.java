package rimebook.live;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import rimebook.testsupport.Races;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

class RenditionCacheTests {

	private static final RenditionKey KEY = new RenditionKey("/follow/cup", false, PageLanguage.OF_PROGRAMS);

	private static final BiConsumer<RenditionKey, Rendition> TOLD = (page, difference) -> {
	};

	private final MomentWatch watch = mock();

	private final Ticking clock = new Ticking();

	private final AtomicInteger made = new AtomicInteger();

	private final RenditionCache renditions = new RenditionCache(this.watch, Stage.SETTINGS, this.clock);

	@BeforeEach
	void standsAtOne() {
		stands(1);
	}

	@Test
	void makesOnceWhileNothingChanges() {
		assertThat(this.renditions.kept(KEY)).isEmpty();
		Rendition first = get();
		assertThat(get()).isSameAs(first);
		assertThat(this.renditions.kept(KEY)).containsSame(first);
		assertThat(this.made).hasValue(1);
	}

	@Test
	void makesAgainWhenTheCompetitionMoved() {
		get();
		stands(2);
		assertThat(this.renditions.kept(KEY)).isEmpty();
		get();
		assertThat(this.made).hasValue(2);
	}

	@Test
	void afterAWhileOneMakesItAfreshAndTheOthersAreGivenWhatIsThere() {
		Rendition first = get();
		this.clock.now = this.clock.now.plusSeconds(6);
		assertThat(this.renditions.kept(KEY)).as("the one").isEmpty();
		assertThat(this.renditions.kept(KEY)).as("another meanwhile").containsSame(first);
		get();
		assertThat(this.made).hasValue(2);
		assertThat(this.renditions.kept(KEY)).isPresent();
	}

	@Test
	void equalBytesAreKeptOnce() {
		Rendition first = this.renditions.get(KEY, "cup", (moment) -> Rendition.of("text/plain", "same"));
		stands(2);
		assertThat(this.renditions.get(KEY, "cup", (moment) -> Rendition.of("text/plain", "same"))).isSameAs(first);
	}

	@Test
	void whatCannotBeMadeIsNotKept() {
		assertThatIllegalStateException().isThrownBy(() -> this.renditions.get(KEY, "cup", (moment) -> {
			throw new IllegalStateException("no");
		}));
		assertThat(this.renditions.kept(KEY)).isEqualTo(Optional.empty());
		assertThat(get()).isNotNull();
	}

	@Test
	void keepsNoMoreBytesThanItMay() {
		RenditionCache small = new RenditionCache(this.watch, Stage.SETTINGS, this.clock, 10_000);
		for (int i = 0; i < 50; i++) {
			RenditionKey key = new RenditionKey("/follow/cup/" + i, false, PageLanguage.OF_PROGRAMS);
			small.get(key, "cup", (moment) -> Rendition.of("text/plain", "long ".repeat(300)));
			assertThat(small.bytes()).isBetween(1500L, 10_000L);
		}
	}

	@Test
	void whatManyAskForStaysWhenEverythingElseIsAskedForOnce() {
		RenditionCache small = new RenditionCache(this.watch, Stage.SETTINGS, this.clock, 100_000);
		Rendition first = small.get(KEY, "cup", (moment) -> Rendition.of("text/plain", "much asked for"));
		for (int i = 0; i < 5000; i++) {
			assertThat(small.kept(KEY)).as("after %d others", i).containsSame(first);
			RenditionKey other = new RenditionKey("/follow/cup/" + i, false, PageLanguage.OF_PROGRAMS);
			small.get(other, "cup", (moment) -> Rendition.of("text/plain", "long ".repeat(300)));
		}
		assertThat(small.bytes()).isLessThanOrEqualTo(100_000);
	}

	@Test
	void manyAtOnceMakeItOnce() throws Exception {
		for (int round = 1; round <= Races.ROUNDS; round++) {
			stands(round);
			Races.all(16, this::get);
			assertThat(this.made).hasValue(round);
		}
	}

	@Test
	void theFollowedPartIsThereBeforeAnybodyAsks() {
		RenditionCache.Part part = part(KEY);
		this.renditions.get(KEY, "cup", (moment) -> Rendition.of("text/plain", "whole"), part);
		assertThat(this.renditions.kept(part.key())).isEmpty();
		stands(2);
		this.renditions.makeAhead("other", moment(2), TOLD);
		assertThat(this.made).hasValue(0);
		this.renditions.makeAhead("cup", moment(2), TOLD);
		assertThat(this.renditions.kept(part.key())).isPresent();
		assertThat(this.renditions.get(part, "cup").bytes(false)).asString().isEqualTo("made 1 at 2");
	}

	@Test
	void ofManyPartsThoseThatAreAskedForMostAreMadeAhead() {
		for (int i = 0; i < 100; i++) {
			this.renditions.get(part(new RenditionKey("/follow/cup/" + i, true, PageLanguage.OF_PROGRAMS)), "cup");
		}
		RenditionCache.Part much = part(KEY);
		for (int i = 0; i < 20; i++) {
			this.renditions.get(much, "cup");
		}
		this.made.set(0);
		stands(2);
		this.renditions.makeAhead("cup", moment(2), TOLD);
		assertThat(this.renditions.kept(much.key())).isPresent();
		assertThat(this.made).hasValue(8);
	}

	@Test
	void followersDoNotWaitForAllThatIsSlow() {
		for (int i = 0; i < 4; i++) {
			RenditionKey key = new RenditionKey("/follow/cup/" + i, true, PageLanguage.OF_PROGRAMS);
			this.renditions.get(new RenditionCache.Part(key, (moment) -> {
				this.clock.now = this.clock.now.plusMillis(100);
				return Rendition.of("text/plain", "made " + this.made.incrementAndGet());
			}), "cup");
		}
		this.made.set(0);
		stands(2);
		this.renditions.makeAhead("cup", moment(2), TOLD);
		assertThat(this.made).hasValue(2);
	}

	@Test
	void eachPartIsGivenBeforeTheNextIsMadeAndTellingItIsNotCounted() {
		List<String> order = new ArrayList<>();
		for (String page : List.of("one", "two", "three")) {
			RenditionKey key = new RenditionKey("/follow/cup/" + page, true, PageLanguage.OF_PROGRAMS);
			this.renditions.get(new RenditionCache.Part(key, (moment) -> {
				order.add("made");
				return Rendition.ofPage(live((moment != null) ? moment.plan() : 0));
			}), "cup");
		}
		order.clear();
		stands(2);
		this.renditions.makeAhead("cup", moment(2), (page, difference) -> {
			this.clock.now = this.clock.now.plusMillis(200);
			order.add("told");
			assertThat(new String(difference.bytes(false), StandardCharsets.UTF_8)).contains("data-since", "<p>2</p>");
		});
		assertThat(order).containsExactly("made", "told", "made", "told", "made", "told");
	}

	@Test
	void whatCannotBeMadeAheadKeepsNothingElseBack() {
		AtomicInteger asked = new AtomicInteger();
		this.renditions.get(new RenditionCache.Part(KEY.ofPart(), (moment) -> {
			if (asked.incrementAndGet() > 1) {
				throw new IllegalStateException("no");
			}
			return Rendition.of("text/plain", "once");
		}), "cup");
		RenditionCache.Part other = part(new RenditionKey("/follow/cup/other", true, PageLanguage.OF_PROGRAMS));
		this.renditions.get(other, "cup");
		stands(2);
		this.renditions.makeAhead("cup", moment(2), TOLD);
		assertThat(asked).hasValue(2);
		assertThat(this.renditions.kept(other.key())).isPresent();
	}

	@Test
	void whoHasAnEarlierPartIsSentWhatDiffersBeforeAnybodyAsks() {
		RenditionCache.Part part = following();
		Rendition page = Rendition.ofPage("<html>" + live(1) + "</html>");
		this.renditions.get(KEY, "cup", (moment) -> page, part);
		this.renditions.shown(part, "cup", page);
		stands(2);
		this.renditions.makeAhead("cup", moment(2), TOLD);
		assertThat(this.renditions.kept(asked(page.part()))).isPresent();
		assertThat(text(page.part())).contains("data-since=\"" + page.part() + "\"", "data-kept", "<p>2</p>");
		String second = this.renditions.kept(part.key()).orElseThrow().part();
		stands(3);
		assertThat(text(second)).contains("data-since=\"" + second + "\"", "<p>3</p>");
		assertThat(text(page.part())).contains("data-since=\"" + page.part() + "\"", "<p>3</p>");
	}

	@Test
	void whoHasNothingThatIsKnownIsSentAllOfIt() {
		RenditionCache.Part part = following();
		String whole = new String(this.renditions.get(part, "cup").bytes(false), StandardCharsets.UTF_8);
		assertThat(this.renditions.kept(asked("0123456789ab"))).containsSame(this.renditions.get(part, "cup"));
		assertThat(text("0123456789ab")).isEqualTo(whole).doesNotContain("data-kept");
		String first = this.renditions.get(part, "cup").part();
		for (int i = 2; i < 6; i++) {
			stands(i);
			this.renditions.get(part, "cup");
		}
		assertThat(text(first)).as("one of long ago").doesNotContain("data-kept").contains("<p>5</p>");
		assertThat(this.renditions.bytes()).isLessThan(5 * 2 * 2000L);
	}

	private String text(String since) {
		return new String(this.renditions.get(following(), "cup", since).bytes(false), StandardCharsets.UTF_8);
	}

	private static RenditionKey asked(String since) {
		return new RenditionKey(KEY.path(), true, KEY.pageLanguage(), since);
	}

	/** A part with a row that stays as it is. */
	private static RenditionCache.Part following() {
		return new RenditionCache.Part(KEY.ofPart(),
				(moment) -> Rendition.ofPage(live((moment != null) ? moment.plan() : 0)));
	}

	private static String live(int plan) {
		String row = IntStream.range(0, 60).mapToObj((i) -> "word " + 7919 * i).collect(Collectors.joining(" "));
		return "<div id=\"live\"><p>" + plan + "</p><table><tbody id=\"a\"><tr><td>" + row
				+ "</td></tr></tbody></table></div>";
	}

	private RenditionCache.Part part(RenditionKey key) {
		return new RenditionCache.Part(key.ofPart(), (moment) -> Rendition.of("text/plain",
				"made " + this.made.incrementAndGet() + " at " + ((moment != null) ? moment.plan() : 0)));
	}

	private Rendition get() {
		return this.renditions.get(KEY, "cup",
				(moment) -> Rendition.of("text/plain", "made " + this.made.incrementAndGet()));
	}

	private static Moment moment(int version) {
		return new Moment(version, Map.of());
	}

	private void stands(int version) {
		given(this.watch.current("cup")).willReturn(moment(version));
	}

	private static final class Ticking extends Clock {

		private Instant now = Instant.parse("2026-02-14T12:00:00Z");

		@Override
		public Instant instant() {
			return this.now;
		}

		@Override
		public ZoneId getZone() {
			return ZoneOffset.UTC;
		}

		@Override
		public Clock withZone(ZoneId zone) {
			return this;
		}

	}

}
