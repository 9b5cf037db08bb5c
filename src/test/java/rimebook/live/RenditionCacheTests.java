package rimebook.live;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import rimebook.testsupport.Races;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

class RenditionCacheTests {

	private static final RenditionKey KEY = new RenditionKey("/follow/cup", false, PageLanguage.OF_PROGRAMS);

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

	private Rendition get() {
		return this.renditions.get(KEY, "cup",
				(moment) -> Rendition.of("text/plain", "made " + this.made.incrementAndGet()));
	}

	private void stands(int version) {
		given(this.watch.current("cup")).willReturn(new Moment(version, Map.of()));
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
